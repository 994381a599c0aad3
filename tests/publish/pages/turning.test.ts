import { fc, it } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { type Cut, cutEach, cutGroups, type Group } from "../../../src/publish/pages/turning.ts";
import { pagesOffered } from "../../../templates/parts/turn-pages.tsx";
import { partSentence } from "../../../templates/words/english/turning.ts";

const groupsOf = (...sizes: readonly number[]): readonly Group<string>[] =>
  sizes.map((size, i) => ({
    title: `Shelf ${i}`,
    items: Array.from({ length: size }, (_, j) => `${i}-${j}`),
  }));

const shown = (cuts: readonly Cut<string>[]) =>
  cuts.map(({ groups }) => groups.flatMap(({ items }) => items));

describe("a long list", () => {
  const anyGroups = fc.array(fc.integer({ min: 0, max: 90 }), { maxLength: 6 });
  const anySize = fc.integer({ min: 7, max: 50 });

  it.prop([anyGroups, anySize, anySize])(
    "loses nothing and tells nothing twice, in its order, and no page is much longer than asked",
    (sizes, later, first) => {
      const groups = groupsOf(...sizes);
      const cuts = cutGroups("a.html", groups, later, first);
      expect(shown(cuts).flat()).toEqual(groups.flatMap(({ items }) => items));
      for (const [i, { turn }] of cuts.entries()) {
        expect(turn).toMatchObject({ here: i, pages: cuts.length });
        expect(turn.shown).toBeLessThanOrEqual((i === 0 ? first : later) + 6);
      }
    },
  );

  it.prop([anyGroups, anySize, anySize])(
    "loses nothing where its first page shows some of each group",
    (sizes, later, first) => {
      const groups = groupsOf(...sizes);
      const cuts = cutEach("a.html", groups, later, first);
      const all = groups.flatMap(({ items }) => items);
      expect(shown(cuts).flat().toSorted()).toEqual(all.toSorted());
      for (const { title, items } of groups)
        expect(cuts[0]?.groups.find((group) => group.title === title)?.items ?? []).toEqual(
          items.slice(0, Math.max(first, cuts.length === 1 ? items.length : 0)),
        );
    },
  );

  it.prop([anyGroups, anySize])("has a heading over every part of a group", (sizes, size) => {
    const groups = groupsOf(...sizes);
    for (const cut of cutGroups("a.html", groups, size))
      for (const { title, items } of cut.groups) {
        expect(items.length).toBeGreaterThan(0);
        for (const item of items) expect(`Shelf ${item.split("-")[0]}`).toBe(title);
      }
  });

  test("has no page for a handful that is left over", () => {
    expect(shown(cutGroups("a.html", groupsOf(54), 48)).map(({ length }) => length)).toEqual([54]);
    expect(shown(cutGroups("a.html", groupsOf(55), 48)).map(({ length }) => length)).toEqual([
      48, 7,
    ]);
  });

  test("is one page, though nothing is on it", () => {
    expect(cutGroups("a.html", groupsOf(0), 48)).toEqual([
      { groups: [], turn: { url: "a.html", here: 0, pages: 1, before: 0, shown: 0, total: 0 } },
    ]);
  });

  test("says which part of it a page shows", () => {
    expect(partSentence({ before: 48, shown: 48, total: 1203 }, "tiles")).toBe(
      "Tiles 49 to 96 of 1,203.",
    );
  });

  it.prop([fc.integer({ min: 2, max: 5000 }), fc.nat()])(
    "offers a few of its pages, the first and the last among them, however many there are",
    (pages, place) => {
      const here = place % pages;
      const offered = pagesOffered({ here, pages });
      expect(offered.length).toBeLessThanOrEqual(7);
      expect(offered).toEqual([...new Set(offered)].toSorted((a, b) => a - b));
      for (const page of [0, pages - 1, here, Math.max(0, here - 1), Math.min(pages - 1, here + 1)])
        expect(offered).toContain(page);
    },
  );
});

import { describe, expect, test } from "vitest";
import type { Lab } from "../../src/colour/cielab.ts";
import { searchEntryOf } from "../../src/publish/page.ts";
import { renderPage } from "../../src/publish/write-pages.ts";
import { plateCounts } from "../../templates/words/colour/plate.ts";
import {
  alone,
  type Coloured,
  colouredCatalogue,
  grey,
} from "../catalogue/colours/colour-support.ts";
import { listPages } from "../support/list-pages.ts";

const blue: Lab = [45, 0, -40];

function pageOf(tiles: readonly Coloured[]) {
  const page = listPages(colouredCatalogue(tiles)).find(({ path }) => path === "colours.html");
  if (!page) throw new Error("no page of colours");
  return { html: renderPage(page), search: searchEntryOf(page) };
}

describe("the page of colours", () => {
  const { html, search } = pageOf([
    [alone("A-1"), blue],
    [alone("A-2"), [46, 0, -41]],
    [alone("A-3"), grey(10)],
    [alone("A-4"), null],
  ]);

  test("leads to every tile by its code, with its colour and its glazes in words", () => {
    const marks = [
      ...html.matchAll(/<a class="plate-mark" href="([^"]*)" aria-label="([^"]*)">/gu),
    ].map(([, link, words]) => [link, words]);
    expect(marks).toEqual([
      ["tiles/a-2.html", "A-2: blue, soot"],
      ["tiles/a-1.html", "A-1: blue, soot"],
      ["tiles/a-3.html", "A-3: black, soot"],
    ]);
  });

  test("leads from each name to all tiles of it, and from a cell's middle to the nearest", () => {
    expect(html).toContain('href="index.html?colour=blue"');
    expect(html).toContain('href="index.html?colour=black"');
    expect([...html.matchAll(/href="index\.html\?near=[\da-f]{6}"/gu)]).toHaveLength(1);
    expect(html.replace(/<[^>]*>/gu, "")).toContain("nearest to this: mid blue");
  });

  test("says how far a difference can be trusted, and what was not measured", () => {
    expect(html).toMatch(/Tiles made and fired alike were measured up to/u);
    expect(html).toContain("3 tiles are measured. 1 tile has no photograph");
  });

  test("is found by its words", () => {
    expect(search?.title).toBe("Colours");
    expect(search?.words).toContain("blue, black");
  });

  test("says how many of a full cell it shows", () => {
    const many = Array.from(
      { length: 40 },
      (_, i): Coloured => [alone(`B-${i}`), grey(45 + i / 9)],
    );
    expect(pageOf(many).html).toContain("15 of 40 shown");
  });

  test("says what would fill it where nothing is measured", () => {
    const empty = pageOf([[alone("A"), null]]).html;
    expect(empty).toContain("No tile is measured yet.");
    expect(empty).not.toContain("<table");
  });
});

test("counts are told with the names that no tile has", () => {
  const plate = { rows: [], measured: 1, unmeasured: 27 };
  expect(plateCounts({ ...plate, absent: ["pink", "purple"] })).toBe(
    "1 tile is measured. 27 tiles have no photograph that could be measured. None is pink or purple.",
  );
});

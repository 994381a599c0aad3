import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parseText } from "../../../src/archive/parse-text.ts";
import { type RecordVersion, tellStory } from "../../../src/catalogue/history/entries.ts";
import { comparer } from "../../../src/catalogue/history/stories.ts";
import {
  firstChange,
  type TileChange,
  tileChanges,
  type WrittenTile,
} from "../../../src/catalogue/history/tile-changes.ts";
import { changedSteps, keyOfStep } from "../../../src/catalogue/history/told-steps.ts";
import { readAs } from "../../../src/records/read.ts";
import type { Step } from "../../../src/records/steps.ts";
import { tileSchema } from "../../../src/records/tile.ts";
import { changeWords, tileHistory } from "../../../templates/words/tile/history.ts";

const shown = new Map([
  ["chalk", "Chalk"],
  ["soot", "Soot"],
  ["buff", "Levels Buff"],
]);
const names = {
  glaze: (id: string) => shown.get(id) ?? null,
  clay: (id: string) => shown.get(id) ?? null,
  firing: (id: string) => (id.startsWith("g-") ? id : null),
};

/** A version as somebody wrote it. */
function written(yaml: string, notes = ""): WrittenTile {
  const { source } = parseText(`---\n${yaml}\n---\n${notes}`, "markdown");
  const read = source && readAs(tileSchema, source);
  if (!read?.ok) throw new Error(`no tile: ${JSON.stringify(read)}`);
  return { record: read.record, notes };
}

const told = (before: WrittenTile, after: WrittenTile) =>
  tileChanges(before, after, names).map(changeWords);

const layers = (...lines: readonly string[]) =>
  `layers:\n${lines.map((l) => `  - ${l}`).join("\n")}`;

describe("what changed between two versions of a tile", () => {
  test("is told with both values where one was corrected", () => {
    const before = written(
      `clay: buff\nglazed: 2026-10-05\n${layers("{glaze: chalk, coats: 2, by: brush}")}\nresult: {surface: satin, effects: pooling, again: yes}`,
    );
    const after = written(
      `clay: buff\nglazed: 2026-10-06\n${layers("{glaze: chalk, coats: 3, by: brush}")}\nresult: {surface: [satin, matte], effects: pooling, run: 4, again: no}`,
    );
    expect(told(before, after)).toEqual([
      "corrected: when it was glazed, 5 October 2026 → 6 October 2026",
      "corrected: Chalk, 2 coats → 3 coats",
      "corrected: the result, satin, run not measured, again: yes → satin and matte, ran 4\u00a0mm, again: no",
    ]);
  });

  test("is told as it came: layers, firings, a result, a look at it later", () => {
    const before = written(layers("fired: bisque", "{glaze: chalk, coats: 2}", "fired: glaze"));
    const after = written(
      `${layers("fired: bisque", "{glaze: chalk, coats: 2}", "{resist: wax, where: rim}", "{glaze: soot, cover: sparse, by: trail}", "{fired: g-1, shelf: top}")}\nresult: {surface: satin, effects: [breaking, pooling]}\nlater: [{on: 2027-01-11, faults: [crazing]}]\nfate: broken`,
    );
    expect(told(before, after)).toEqual([
      "what became of it: broken",
      "added: Wax resist, at the rim",
      "added: Soot, sparse cover, trailed",
      "fired in g-1, top shelf",
      "the result: satin, breaking and pooling",
      "the look on 11 January 2027: fault: crazing",
    ]);
    expect(told(after, before)).toEqual([
      "taken out: what became of it, broken",
      "taken out: Wax resist, at the rim",
      "taken out: Soot, sparse cover, trailed",
      "corrected: fired in g-1, top shelf → glaze firing noted",
      "taken out: the result, satin, breaking and pooling",
      "taken out: the look on 11 January 2027, fault: crazing",
    ]);
  });

  test("names no glaze, clay or firing that the site does not show", () => {
    const before = written(
      `clay: secret-clay\n${layers("{glaze: secret-glaze, coats: 1}", "{glaze: 7, coats: 1}", "fired: secret-load")}`,
    );
    const after = written(
      `clay: buff\n${layers("{glaze: other-secret, coats: 1}", "{glaze: soot, coats: 1}", "fired: g-1")}`,
    );
    expect(told(before, after)).toEqual([
      "the clay: Levels Buff",
      "the glaze of a layer was corrected",
      "corrected: jar 7 → Soot",
      "corrected: fired in a load that is not shown here → fired in g-1",
    ]);
  });

  test("is told of a maker's words and of the maker by no word of them", () => {
    const one = written(
      `maker: m1-secret\nclay-batch: secret\ntexture: secret\nformerly: [SECRET-1]\nphoto: {alt: secret}\n${layers("{glaze: chalk, detail: secret}", "{fade: {from: chalk, to: soot, along: secret}}", "{fired: glaze, shelf: secret}")}\nresult: {surface: satin, after: secret, next-time: secret}`,
      "secret notes",
    );
    const other = written(
      `${layers("glaze: chalk", "{fade: {from: chalk, to: soot}}", "fired: glaze")}\nresult: {surface: satin}`,
    );
    for (const changes of [tileChanges(one, other, names), tileChanges(other, one, names)]) {
      expect(JSON.stringify(changes)).not.toMatch(/secret/iu);
      expect(changes.map(changeWords)).toEqual([
        "the clay's batch was changed",
        "its former codes were changed",
        "words beside the layers were changed",
        "the words for next time were changed",
        "the notes were changed",
        "what is said of the photograph was changed",
        "which firing the result is of was changed",
        "the words for its texture were changed",
        "something was changed that pages do not show",
      ]);
    }
  });

  test("is nothing where only the way of writing it changed", () => {
    const plain = written(
      layers("{glaze: chalk, coats: 2, where: all, thickness: usual}"),
      "Ran.\n",
    );
    expect(
      told(plain, written(`${layers("{coats: 2, glaze: Chalk}")} # comment`, "\nRan.")),
    ).toEqual([]);
  });
});

describe("the steps that changed", () => {
  const step = fc.constantFrom(
    ...["chalk", "soot"].flatMap((glaze) =>
      [1, 2].map((coats) => ({ step: "glaze", glaze, coats }) as Step),
    ),
    { step: "fired", fired: "glaze" } as Step,
    { step: "resist", resist: "wax" } as Step,
  );
  const stack = fc.array(step, { maxLength: 8 });

  test("make the later stack of the earlier one, and are none where both are alike", () => {
    fc.assert(
      fc.property(stack, stack, (before, after) => {
        const changes = changedSteps(before, after);
        const bag = (steps: readonly (Step | null)[]) =>
          steps.flatMap((each) => (each ? [keyOfStep(each)] : [])).sort();
        const gone = bag(changes.map((change) => change.before));
        const come = bag(changes.map((change) => change.after));
        const kept = bag(before);
        for (const key of gone) kept.splice(kept.indexOf(key), 1);
        expect([...kept, ...come].sort()).toEqual(bag(after));
        expect(changedSteps(before, before)).toEqual([]);
      }),
    );
  });
});

describe("the story of a tile", () => {
  const a = written(layers("{glaze: chalk, coats: 1}", "fired: glaze"));
  const b = written(layers("{glaze: chalk, coats: 2}", "fired: glaze"));
  const c = written(layers("{glaze: chalk, coats: 2}", "fired: g-1"));
  const held = new Map<string, WrittenTile | null>([
    ["a", a],
    ["b", b],
    ["c", c],
    ["x", null],
  ]);

  const story = (versions: readonly RecordVersion[]) => {
    const compare = comparer<WrittenTile, TileChange>(versions, held, {
      unreadable: { what: "unreadable" },
      first: ({ record }) => firstChange(record),
      differences: (before, after) => tileChanges(before, after, names),
    });
    return tellStory(versions, compare);
  };
  const lines = (versions: readonly RecordVersion[]) =>
    (tileHistory(story(versions))?.lines ?? []).map(({ day, words }) => `${day}: ${words}`);
  const version = (day: number, blob: string, ...before: string[]) => ({
    day: `2026-10-${String(day).padStart(2, "0")}`,
    blob,
    before,
  });

  test("tells each day once, and versions of one day as one", () => {
    expect(lines([version(6, "a"), version(20, "b", "a"), version(20, "c", "b")])).toEqual([
      "6 October 2026: written down, with 2 layers.",
      "20 October 2026: corrected: Chalk, 1 coat → 2 coats; fired in g-1.",
    ]);
    expect(lines([version(6, "a"), version(20, "b", "a"), version(20, "a", "b")])).toHaveLength(1);
  });

  test("compares over a version that cannot be read, and says that there was one", () => {
    expect(lines([version(6, "a"), version(7, "x", "a"), version(8, "b", "x")])).toEqual([
      "6 October 2026: written down, with 2 layers.",
      "7 October 2026: a version that cannot be read.",
      "8 October 2026: corrected: Chalk, 1 coat → 2 coats.",
    ]);
  });

  test("tells nothing twice where branches came together", () => {
    const branches = [
      version(6, "a"),
      version(7, "b", "a"),
      version(8, "c", "a"),
      version(9, "b", "c", "b"),
    ];
    expect(lines(branches)).toEqual([
      "6 October 2026: written down, with 2 layers.",
      "7 October 2026: corrected: Chalk, 1 coat → 2 coats.",
      "8 October 2026: corrected: Chalk, 1 coat → 2 coats; fired in g-1.",
      "9 October 2026: corrected: fired in g-1 → glaze firing noted.",
    ]);
    const joined = [
      version(6, "a"),
      version(7, "b", "a"),
      version(8, "c", "a"),
      version(9, "c", "b", "c"),
    ];
    expect(lines(joined)).toHaveLength(3);
  });

  test("is bounded, and says how many days it leaves out", () => {
    const flips = Array.from({ length: 60 }, (_, i) => {
      const [now, then] = i % 2 === 0 ? ["a", "b"] : ["b", "a"];
      return { day: `${2000 + i}-01-01`, blob: now, before: i === 0 ? [] : [then] };
    });
    const long = story(flips);
    expect(long.entries).toHaveLength(30);
    expect(tileHistory(long)?.earlier).toBe("30 earlier days of changes are not told here.");
  });
});

import { describe, expect, it } from "vitest";
import { findLongWaiting } from "../../src/checks/long-waiting.ts";
import {
  archive,
  coat,
  codesIn,
  fired,
  firing,
  loaded,
  result,
  set,
  tell,
  tellProblem,
  tile,
} from "./support.ts";

const firings = [
  firing("b-1", { kind: "bisque", on: "2026-10-01", tiles: { top: [["TB-1"]] } }),
  firing("g-1", { on: "2026-10-20", tiles: { top: [["TB-1"]] } }),
  firing("g-2", { on: "2026-11-03" }),
  firing("coming"),
];
const bisqued = fired("b-1", "bisque");
const told = (...tiles: ReturnType<typeof tile>[]) => tell({ tiles, firings });
const found = (...tiles: ReturnType<typeof tile>[]) => codesIn({ tiles, firings });
const look = (on: string) => ({ on }) as never;

describe("the days of a tile", () => {
  it("may follow each other, or all be the same", () => {
    const steps = [bisqued, coat("soot"), fired("g-1"), fired("g-2")];
    const days = { formed: "2026-09-20", glazed: "2026-10-14", later: [look("2027-01-11")] };
    const oneDay = { formed: "2026-10-01", glazed: "2026-10-01", later: [look("2026-10-01")] };
    expect(found(tile("TB-1", steps, days))).toEqual([]);
    expect(found(tile("TB-2", [bisqued, coat("soot"), bisqued], oneDay))).toEqual([]);
  });

  it("a tile is not glazed before it is formed", () => {
    const early = tile("TB-1", [coat("soot")], { formed: "2026-10-15", glazed: "2026-10-14" });
    expect(told(early)).toMatchInlineSnapshot(`
      "error dates-backwards tiles/TB-1.md › glazed
      TB-1 was formed on 2026-10-15 and after that glazed on 2026-10-14: the days run backwards
      Mend the day that is mistyped, or put the layers into the order in which they were done."
    `);
  });

  it("a tile is not bisqued before it is formed", () => {
    expect(told(tile("TB-1", [bisqued], { formed: "2026-10-15" }))).toMatchInlineSnapshot(`
      "error dates-backwards tiles/TB-1.md › layers › 0 › fired
      TB-1 was formed on 2026-10-15 and after that fired in b-1 on 2026-10-01: the days run backwards
      Mend the day that is mistyped, or put the layers into the order in which they were done."
    `);
  });

  it("a firing above the layers does not come before they went on", () => {
    const early = tile("TB-1", [bisqued, coat("soot"), fired("g-1")], { glazed: "2026-10-21" });
    expect(told(early)).toMatchInlineSnapshot(`
      "error dates-backwards tiles/TB-1.md › layers › 2 › fired
      TB-1 was glazed on 2026-10-21 and after that fired in g-1 on 2026-10-20: the days run backwards
      Mend the day that is mistyped, or put the layers into the order in which they were done."
    `);
  });

  it("a firing below the layers does not come after they went on", () => {
    const late = tile("TB-1", [fired("g-1"), coat("soot")], { glazed: "2026-10-14" });
    expect(told(late)).toMatchInlineSnapshot(`
      "error dates-backwards tiles/TB-1.md › glazed
      TB-1 was fired in g-1 on 2026-10-20 and after that glazed on 2026-10-14: the days run backwards
      Mend the day that is mistyped, or put the layers into the order in which they were done."
    `);
  });

  it("a bisque that a load list put above the layers is asked for its place", () => {
    const above = tile("TB-1", [coat("soot"), loaded("b-1", "top", "bisque")], {
      glazed: "2026-10-14",
    });
    expect(told(above)).toMatchInlineSnapshot(`
      "error dates-backwards tiles/TB-1.md › glazed
      TB-1 was glazed on 2026-10-14 and after that fired in b-1 on 2026-10-01: the days run backwards
      If only the place of the firing is wrong, write “- fired: bisque” where it belongs among the layers; otherwise mend the day that is mistyped, or take the tile out of the load list."
    `);
  });

  it("a glaze firing does not come before the bisque beneath it", () => {
    const steps = [fired("g-1", "bisque"), coat("soot"), fired("b-1")];
    expect(told(tile("TB-1", steps))).toMatchInlineSnapshot(`
      "error dates-backwards tiles/TB-1.md › layers › 2 › fired
      TB-1 was fired in g-1 on 2026-10-20 and after that fired in b-1 on 2026-10-01: the days run backwards
      Mend the day that is mistyped, or put the layers into the order in which they were done."
    `);
  });

  it("two firings that load lists put in the wrong order are told in a load list", () => {
    const steps = [coat("soot"), loaded("g-1", "top"), loaded("b-1", "top", "bisque")];
    expect(told(tile("TB-1", steps))).toMatchInlineSnapshot(`
      "error dates-backwards tiles/firings/b-1.md › tiles › top › 0
      TB-1 was fired in g-1 on 2026-10-20 and after that fired in b-1 on 2026-10-01: the days run backwards
      If only the place of the firing is wrong, write “- fired: bisque” where it belongs among the layers; otherwise mend the day that is mistyped, or take the tile out of the load list."
    `);
  });

  it("nobody looks again before the last firing", () => {
    const steps = [bisqued, coat("soot"), fired("g-1"), fired("g-2")];
    const days = { later: [look("2026-11-10"), look("2026-10-25")] };
    expect(told(tile("TB-1", steps, days))).toMatchInlineSnapshot(`
      "error dates-backwards tiles/TB-1.md › later › 1 › on
      TB-1 was looked at again on 2026-10-25, before it was fired in g-2 on 2026-11-03
      Mend the day that is mistyped; what was seen before the last firing belongs in a result with “after:”."
    `);
  });

  it("firings without a day and steps without a firing stand in nobody's way", () => {
    const steps = [fired(null, "bisque"), coat("soot"), fired("coming"), fired("lost")];
    const days = { glazed: "2026-10-14", later: [look("2026-01-01")] };
    expect(found(tile("TB-1", steps, days))).toEqual([]);
  });

  it("the glazing day of a set's defaults means nothing on a bare tile", () => {
    expect(found(tile("TB-1", [bisqued, fired("g-1")], { glazed: "2026-09-01" }))).toEqual([]);
  });
});

describe("the days of a set", () => {
  it("it does not end before it begins", () => {
    const sets = [set("thursday", { begins: "2026-09-01", ends: "2026-06-30" })];
    expect(tell({ sets })).toMatchInlineSnapshot(`
      "error set-ends-early tiles/thursday/set.md › ends
      thursday begins on 2026-09-01 and ends on 2026-06-30: the days run backwards
      Mend the day that is mistyped."
    `);
  });

  it("it may end on the day it begins, or not say", () => {
    const day = set("a", { begins: "2026-09-01", ends: "2026-09-01" });
    const open = set("b", { begins: "2026-09-01" });
    expect(codesIn({ sets: [day, open] })).toEqual([]);
  });
});

describe("tiles that wait", () => {
  const waiting = (about: Parameters<typeof tile>[2], today: string) =>
    findLongWaiting(archive({ tiles: [tile("TB-1", [coat("soot")], about)] }), today);

  it("a tile that has waited for more than sixteen weeks is told", () => {
    const [problem] = waiting({ glazed: "2026-01-01" }, "2026-05-01");
    expect(problem && tellProblem(problem)).toMatchInlineSnapshot(`
      "warning long-waiting tiles/TB-1.md › glazed
      TB-1 was glazed on 2026-01-01, 17 weeks ago, and has neither result nor fate
      If it has come out of the kiln, write its result; if nobody has it, write “fate: lost”."
    `);
  });

  it("sixteen weeks to the day are not too long, a day more is", () => {
    expect(waiting({ glazed: "2026-01-01" }, "2026-04-23")).toHaveLength(0);
    expect(waiting({ glazed: "2026-01-01" }, "2026-04-24")).toHaveLength(1);
  });

  it("a result, a fate, or no day of glazing end the wait", () => {
    expect(waiting({ glazed: "2026-01-01", result: [result()] }, "2027-01-01")).toEqual([]);
    expect(waiting({ glazed: "2026-01-01", fate: "lost" }, "2027-01-01")).toEqual([]);
    expect(waiting({}, "2027-01-01")).toEqual([]);
  });
});

/** What is said of a tile in a few lines agrees with its record, and what nobody wrote down is said. */
import { fc, test as property } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import type { Circumstance } from "../../../../src/catalogue/circumstance.ts";
import type { CatalogueTile } from "../../../../src/catalogue/tiles.ts";
import type { Result } from "../../../../src/records/tile.ts";
import { cameOut, howItWentOn } from "../../../../templates/words/tile/account.ts";
import { circumstanceHeading, firedWords } from "../../../../templates/words/tile/circumstance.ts";
import { coat, fired, resist } from "../../../checks/support.ts";

const plain = {
  ...{ steps: [], glazes: { soot: { id: "soot", name: "Soot", url: "" } }, texture: "smooth" },
  ...{ results: [{}], fate: null, faults: [], run: null, again: null, surface: [], effects: [] },
} as unknown as CatalogueTile;

describe("how a tile was glazed", () => {
  test("is told in the order in which it was done, firings left out", () => {
    const steps = [
      ...[fired("b-1", "bisque"), coat("soot", { coats: 2, by: "dip" }), resist("wax")],
      ...[coat("mist", { coats: null }), fired("g-1")],
    ];
    expect(howItWentOn({ ...plain, steps: steps as never, texture: "combed" })).toBe(
      "Soot: 2 coats, dipped; then wax resist; then mist: coats not recorded. Combed clay.",
    );
  });

  test("names six steps, and counts the others", () => {
    const steps = Array.from({ length: 9 }, () => coat("soot"));
    expect(howItWentOn({ ...plain, steps: steps as never })).toMatch(/; then 3 more steps\.$/u);
  });
});

describe("what came of a tile", () => {
  test.each<[string, Partial<CatalogueTile>]>([
    ["No result recorded.", { results: [] }],
    ["It stuck to the kiln shelf.", { results: [], fate: "stuck" }],
    ["Faults not recorded; run not measured. Again: not recorded.", {}],
    [
      "Gloss; fault: running; ran 24\u00a0mm. Again: no. It stuck to the kiln shelf.",
      {
        ...{ surface: ["gloss"], faults: ["running"], run: 24, again: "no", fate: "stuck" },
        results: [{ faults: ["running"] } as Result],
      },
    ],
    [
      "No fault found; did not run. Again: yes.",
      { results: [{ faults: ["none"] } as Result], run: 0, again: "yes" },
    ],
  ])("%s", (words, about) => {
    expect(cameOut({ ...plain, ...about })).toBe(words);
  });

  property.prop([fc.option(fc.nat(90)), fc.option(fc.constantFrom("yes" as const, "no" as const))])(
    "is never quiet about how far it ran, nor whether it would be made again",
    (run, again) => {
      const words = cameOut({ ...plain, run, again }).toLowerCase();
      const ran = run === 0 ? "did not run" : `ran ${run}\u00a0mm`;
      expect(words).toContain(run === null ? "run not measured" : ran);
      expect(words).toContain(again === null ? "again: not recorded." : `again: ${again}.`);
    },
  );
});

describe("the heading over tiles", () => {
  const nothing: Circumstance = {
    ...{ cone: null, atmosphere: null, fire: null, cooling: "unknown", firings: 1 },
    ...{ clay: null, shape: "l-shape", angle: null },
  };

  test("says what is known, and what nobody wrote down", () => {
    expect(circumstanceHeading(nothing)).toBe(
      "Cone not recorded, atmosphere not recorded, clay not recorded, an L-shaped tile",
    );
    expect(firedWords(nothing)).toBe("how it cooled is not recorded");
    const known: Circumstance = {
      ...{ cone: "6" as never, atmosphere: "reduction", fire: "salt", cooling: "slowed" },
      ...{ firings: 2, clay: { id: "buff", name: "Buff", url: "" }, shape: "upright", angle: 80 },
    };
    expect(circumstanceHeading(known)).toBe(
      "Cone 6, reduction, salt fired, Buff, an upright tile at 80°",
    );
    expect(firedWords(known)).toBe("glaze fired 2 times, cooled slowly");
  });

  test("says no more of a tile that waits than what it is", () => {
    const waiting = { ...nothing, firings: 0 };
    expect(circumstanceHeading(waiting)).toBe("Not fired yet, clay not recorded, an L-shaped tile");
    expect(firedWords(waiting)).toBe("");
  });
});

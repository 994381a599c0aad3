import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { TileStep } from "../../src/records/archive.ts";
import { countCoats, findLaps } from "../../src/records/coat-stack.ts";
import type { Areas } from "../../src/records/steps.ts";
import { areas } from "../../src/terms/choices.ts";
import { coat, fired, removed, resist } from "../checks/support.ts";

const laps = (steps: readonly TileStep[]) =>
  findLaps(steps).map(({ over, under }) => `${over} over ${under}`);

const at = (...where: [Areas[0], ...Areas[0][]]) => ({ where });

describe("a layer of glaze lies over", () => {
  test("the nearest earlier layer whose area meets its own", () => {
    expect(laps([coat("soot"), coat("chalk"), coat("plum")])).toEqual([
      "chalk over soot",
      "plum over chalk",
    ]);
  });

  test("nothing where the areas are two different ones", () => {
    expect(laps([coat("soot", at("left")), coat("chalk", at("right"))])).toEqual([]);
  });

  test("the same area, and all of it from either side", () => {
    expect(laps([coat("soot", at("rim")), coat("chalk", at("rim"))])).toEqual(["chalk over soot"]);
    expect(laps([coat("soot"), coat("chalk", at("rim"))])).toEqual(["chalk over soot"]);
    expect(laps([coat("soot", at("rim")), coat("chalk")])).toEqual(["chalk over soot"]);
  });

  test("what lies beneath each of its areas", () => {
    const steps = [
      coat("soot", at("top")),
      coat("plum", at("bottom")),
      coat("chalk", at("top", "bottom")),
    ];
    expect(laps(steps)).toEqual(["chalk over soot", "chalk over plum"]);
  });

  test("a glaze of another area that it names", () => {
    const steps = [coat("soot", at("left")), coat("chalk", { where: ["right"], over: ["SOOT"] })];
    expect(laps(steps)).toEqual(["chalk over soot"]);
  });

  test("what was there before a resist and a firing", () => {
    const steps = [coat("soot"), resist("wax", ["motif"]), fired(null), coat("chalk")];
    expect(laps(steps)).toEqual(["chalk over soot"]);
  });

  test("both ends of a fade, and both ends lie over what is beneath", () => {
    expect(laps([coat("soot"), coat(["plum", "sky"])])).toEqual([
      "plum over soot",
      "sky over soot",
    ]);
    expect(laps([coat(["plum", "sky"]), coat("soot")])).toEqual([
      "soot over plum",
      "soot over sky",
    ]);
  });
});

describe("no pair is made by", () => {
  test("a touch-up, on either side", () => {
    expect(laps([coat("soot"), coat("chalk", { touchUp: true })])).toEqual([]);
    expect(laps([coat("soot", { touchUp: true }), coat("chalk")])).toEqual([]);
  });

  test("what was taken off to start again", () => {
    expect(laps([coat("soot"), removed("all"), coat("chalk")])).toEqual([]);
  });

  test("another coat of the same glaze", () => {
    expect(laps([coat("soot"), coat("Soot")])).toEqual([]);
  });
});

describe("coats", () => {
  test("of one glaze in one area add up", () => {
    const steps = [coat("soot", { coats: 2 }), coat("chalk"), coat("soot", { coats: 1 })];
    expect(countCoats(steps)).toContainEqual({ glaze: "soot", area: "all", coats: 3 });
  });

  test("that nobody noted leave the sum unknown", () => {
    const steps = [coat("soot", { coats: 2 }), coat("soot", { coats: null })];
    expect(countCoats(steps)).toEqual([{ glaze: "soot", area: "all", coats: null }]);
  });

  test("of a touch-up are not counted", () => {
    const steps = [coat("soot", { coats: 2 }), coat("soot", { coats: 1, touchUp: true })];
    expect(countCoats(steps)).toEqual([{ glaze: "soot", area: "all", coats: 2 }]);
  });
});

const anyCoat = fc
  .record({
    glaze: fc.constantFrom("soot", "chalk", "plum"),
    where: fc.uniqueArray(fc.constantFrom(...areas), { minLength: 1, maxLength: 3 }),
    touchUp: fc.boolean(),
  })
  .map(({ glaze, where, touchUp }) => coat(glaze, { where: where as unknown as Areas, touchUp }));

test("no glaze ever lies over itself, and each lies over one that came before", () => {
  fc.assert(
    fc.property(fc.array(anyCoat, { maxLength: 6 }), (steps) => {
      for (const { over, under, upper, lower } of findLaps(steps)) {
        expect(over).not.toBe(under);
        expect(steps.indexOf(lower)).toBeLessThan(steps.indexOf(upper));
      }
    }),
  );
});

test("a resist or a firing between layers changes no pair", () => {
  fc.assert(
    fc.property(fc.array(anyCoat, { maxLength: 6 }), fc.nat(6), (steps, i) => {
      const between = [...steps.slice(0, i), resist("wax"), fired(null), ...steps.slice(i)];
      expect(laps(between)).toEqual(laps(steps));
    }),
  );
});

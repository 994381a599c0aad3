import { describe, expect, test } from "vitest";
import { glazeSchema } from "../../src/records/glaze.ts";
import { readAs, type SourceMap } from "../../src/records/read.ts";
import { tileSchema } from "../../src/records/tile.ts";

const report = {
  on: "2026-07-03",
  laboratory: "Brackwater Laboratory",
  method: "ISO 6486-1",
  ware: "one mug",
  fired: "g-1",
  found: [
    { element: "lead", below: "0,02", unit: "mg/L" },
    { element: "cobalt", amount: "0", unit: "mg/L" },
  ],
};

const readGlaze = (tests: readonly SourceMap[]) =>
  readAs(glazeSchema, {
    name: "Liner",
    kind: "glaze",
    bought: { maker: "Oxbow" },
    "leach-tests": tests as never,
  });

describe("a laboratory’s report", () => {
  test("is read on a glaze and on a tile, nought and less than can be measured told apart", () => {
    const glaze = readGlaze([report]);
    const tile = readAs(tileSchema, { layers: [{ glaze: "soot" }], "leach-tests": [report] });
    for (const reading of [glaze, tile]) {
      if (!reading.ok) throw new Error(reading.faults[0]?.message);
      expect(reading.record.leachTests).toEqual([
        {
          ...report,
          found: [
            { element: "lead", below: 0.02, unit: "mg/L" },
            { element: "cobalt", amount: 0, unit: "mg/L" },
          ],
        },
      ]);
    }
  });

  test.each([
    [
      { found: [{ element: "lead", unit: "mg/L" }] },
      "Nothing says how much was found",
      "Write exactly one of: amount, below.",
    ],
    [
      { found: [{ element: "lead", amount: "1", below: "2", unit: "mg/L" }] },
      "amount and below both say how much was found",
      "Keep exactly one of: amount, below.",
    ],
    [
      { found: [{ element: "lead", below: "0", unit: "mg/L" }] },
      "“0” is not a limit of measuring",
      "Write a number above 0, without its unit.",
    ],
    [
      { found: [{ element: "lead", amount: "<0.02", unit: "mg/L" }] },
      "“<0.02” is not an amount found",
      "Write a number of at least 0, without its unit.",
    ],
    [
      { on: "July" },
      "“July” is not written as a day is written here",
      "Write year, month and day, as in 2026-10-14.",
    ],
  ])("with %j says what is wrong and how to put it right", (wrong, message, hint) => {
    const reading = readGlaze([{ ...report, ...wrong } as SourceMap]);
    expect(reading.ok ? [] : reading.faults).toMatchObject([{ message, hint }]);
  });
});

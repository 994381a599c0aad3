import { fc, test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { changeBetween, partsOf } from "../../src/likeness/change.ts";
import { seriesAmong } from "../../src/likeness/series.ts";
import { coat, fired } from "../checks/support.ts";
import { anyFamily, made, makeUp } from "./make-ups.ts";

const soot = (coats: number | null, load = "g-1") => [
  coat("soot", { coats, by: "brush" }),
  fired(load),
];

test("tiles that differ in one facet are a series, by its values", () => {
  const tiles = [soot(1), soot(2), soot(3), soot(2), soot(1, "g-slow"), soot(null)].map((steps) =>
    makeUp(made(steps)),
  );
  const found = seriesAmong(tiles, (one) => one).map(({ aspect, rows }) => ({
    aspect,
    rows: rows.map(({ step, byValue }) => ({
      step,
      byValue: [...byValue].map(([value, all]) => [value, all.map((one) => tiles.indexOf(one))]),
    })),
  }));
  const coats = {
    step: 0,
    byValue: [
      ["1", [0]],
      ["2", [1, 3]],
      ["3", [2]],
    ],
  };
  const cooling = {
    step: 1,
    byValue: [
      ["natural", [0]],
      ["slowed", [4]],
    ],
  };
  expect(found).toEqual([
    { aspect: "coats", rows: [coats] },
    { aspect: "cooling", rows: [cooling] },
  ]);
});

property.prop([fc.array(anyFamily, { maxLength: 2 })], { numRuns: 300 })(
  "two tiles of a row with other values are one change apart, in that facet",
  (families) => {
    const all = families.flat().map(makeUp);
    for (const { aspect, rows } of seriesAmong(all, (one) => one))
      for (const { step, byValue } of rows) {
        expect(byValue.size).toBeGreaterThan(1);
        const firsts = [...byValue.values()].map(([first]) => partsOf(first));
        for (const a of firsts)
          for (const b of firsts)
            if (a !== b) expect(changeBetween(a, b)).toMatchObject({ kind: "facet", aspect, step });
      }
  },
);

/** Grids at random: glazes, cones, clays, and what was tried. */
import { fc } from "@fast-check/vitest";
import type { GridIndex, GridRow } from "../../../src/publish/grid-file.ts";
import { chartedCones, compareCones } from "../../../src/terms/cones.ts";

export interface AnyGrid {
  readonly index: GridIndex;
  /** What was tried at the first cone. */
  readonly rows: readonly GridRow[];
}

const range = fc
  .tuple(fc.constantFrom(...chartedCones), fc.constantFrom(...chartedCones))
  .map(([a, b]) => (compareCones(a, b) > 0 ? ([b, a] as const) : ([a, b] as const)));

const glazes = fc
  .array(
    fc.record({
      stocked: fc.boolean(),
      cones: fc.option(range),
      moves: fc.constantFrom("runs" as const, "little" as const, "none" as const, null),
    }),
    { minLength: 1, maxLength: 8 },
  )
  .map((all) => all.map((glaze, i) => ({ ...glaze, id: `g-${i}`, name: `Glaze ${i}` })));

const count = fc.nat({ max: 3 });

const rowsOf = (size: number): fc.Arbitrary<readonly GridRow[]> => {
  const place = fc.nat({ max: size - 1 });
  const met = fc.tuple(place, place, fc.nat({ max: 2 }), fc.nat({ max: 1 }));
  const came = fc.tuple(count, count, count, fc.nat({ max: 30 }), fc.boolean());
  return fc
    .uniqueArray(fc.tuple(met, came), { selector: ([key]) => key.join(), maxLength: 20 })
    .map((all) =>
      all.map(([[over, under, clay, fire], [yes, changed, no, run, seen]], i) => [
        ...([over, under, clay, fire, yes + changed + no + 1, `T-${i}`] as const),
        ...([seen ? `p-${i}.jpg` : "", run > 0 ? 1 : 0, run, yes, changed, no, [i % 3]] as const),
      ]),
    );
};

export const anyGrid: fc.Arbitrary<AnyGrid> = glazes.chain((all) =>
  rowsOf(all.length).map((rows) => ({
    index: {
      glazes: all,
      cones: { keys: ["6", "05-half", ""], labels: ["6", "05½", ""], parts: [1, 1, 1] },
      clays: { keys: ["buff", "white", ""], labels: ["Buff", "White", ""] },
      atmospheres: { keys: ["oxidation", ""], labels: ["oxidation", ""] },
      faults: ["crawling", "crazing", "pinholing"],
      first: 0,
      tried: [],
    },
    rows,
  })),
);

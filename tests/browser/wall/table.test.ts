import { fc, test as propertyTest } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import {
  type Besides,
  type Choice,
  findTiles,
  type Marks,
  makeTable,
} from "../../../src/browser/wall/table.ts";
import type { FacetColumn, Facets } from "../../../src/publish/facets-file.ts";
import type { FacetName } from "../../../src/terms/facets.ts";

const names: readonly FacetName[] = ["cone", "surface", "effect"];

/** Facets of tiles given as lists of values, four values a facet. */
function facetsOf(tiles: readonly (readonly (readonly number[])[])[]): Facets {
  const columns = names.map((name, at): [FacetName, FacetColumn] => [
    name,
    {
      keys: ["a", "b", "c", "d"],
      labels: ["A", "B", "C", "D"],
      combinations: tiles.map((tile) => tile[at] ?? []),
      tiles: tiles.map((_, i) => i),
    },
  ]);
  return {
    codes: tiles.map((_, i) => `T-${i}`),
    columns: Object.fromEntries(columns),
  } as unknown as Facets;
}

const values = fc.uniqueArray(fc.integer({ min: 0, max: 3 }), { maxLength: 3 });
const someTiles = fc.array(fc.tuple(values, values, values), { maxLength: 30 });
const someChoice = fc
  .tuple(...names.map(() => fc.option(fc.integer({ min: 0, max: 3 }))))
  .map((places): Choice => {
    const chosen = names.flatMap((name, i) => {
      const place = places[i];
      return place === null || place === undefined ? [] : [[name, place] as const];
    });
    return new Map(chosen);
  });

const someMarks = fc.option(fc.array(fc.integer({ min: 0, max: 1 })));

describe("finding tiles", () => {
  propertyTest.prop([someTiles, someChoice, someMarks, someMarks])(
    "leaves and counts what going through them one by one does",
    (tiles, choice, said, coloured) => {
      const given = (marks: readonly number[] | null) =>
        marks ? Uint8Array.from(tiles, (_, i) => marks[i] ?? 0) : undefined;
      const marks: Marks = { words: given(said), near: given(coloured) };
      const fits = (tile: number, wanted: Choice, heeded: readonly Besides[]) =>
        heeded.every((name) => !marks[name] || marks[name][tile] === 1) &&
        names.every((name, at) => {
          const place = wanted.get(name);
          return place === undefined || tiles[tile]?.[at]?.includes(place) === true;
        });
      const left = (wanted: Choice, heeded: readonly Besides[] = ["words", "near"]) =>
        tiles.flatMap((_, tile) => (fits(tile, wanted, heeded) ? [tile] : []));

      const found = findTiles(makeTable(facetsOf(tiles)), choice, marks);
      expect([...found.tiles]).toEqual(left(choice));
      expect(found.without.get("words")).toBe(left(choice, ["near"]).length);
      expect(found.without.get("near")).toBe(left(choice, ["words"]).length);
      for (const name of names) {
        const others = new Map([...choice].filter(([other]) => other !== name));
        expect(found.without.get(name)).toBe(left(others).length);
        for (const place of [0, 1, 2, 3]) {
          const instead = left(new Map([...others, [name, place]]));
          expect(found.counts.get(name)?.[place], `${name} ${place}`).toBe(instead.length);
        }
      }
    },
  );

  test("a value counts what choosing it instead of the chosen one would leave", () => {
    const facets = facetsOf([
      [[0], [1], []],
      [[1], [1], []],
      [[1], [2], []],
    ]);
    const { counts } = findTiles(makeTable(facets), new Map([["cone", 0]]));
    expect([...(counts.get("cone") ?? [])]).toEqual([1, 2, 0, 0]);
    expect([...(counts.get("surface") ?? [])]).toEqual([0, 1, 0, 0]);
  });
});

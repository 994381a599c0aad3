import { fc, test as propertyTest } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { type Choice, findTiles, makeTable } from "../../../src/browser/wall/table.ts";
import type { FacetColumn, FacetName, Facets } from "../../../src/publish/facets-file.ts";

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

describe("finding tiles", () => {
  propertyTest.prop([someTiles, someChoice, fc.option(fc.array(fc.integer({ min: 0, max: 1 })))])(
    "leaves and counts what going through them one by one does",
    (tiles, choice, said) => {
      const words = said ? Uint8Array.from(tiles, (_, i) => said[i] ?? 0) : undefined;
      const fits = (tile: number, wanted: Choice, heed = true) =>
        (!heed || !words || words[tile] === 1) &&
        names.every((name, at) => {
          const place = wanted.get(name);
          return place === undefined || tiles[tile]?.[at]?.includes(place) === true;
        });
      const left = (wanted: Choice, heed = true) =>
        tiles.flatMap((_, tile) => (fits(tile, wanted, heed) ? [tile] : []));

      const found = findTiles(makeTable(facetsOf(tiles)), choice, words);
      expect([...found.tiles]).toEqual(left(choice));
      expect(found.without.get("words")).toBe(left(choice, false).length);
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

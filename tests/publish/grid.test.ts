import { describe, expect, test } from "vitest";
import { makeGrid, makeGridScripts } from "../../src/publish/grid.ts";
import { idKey } from "../../src/terms/ids.ts";
import { catalogueOf } from "../bench/catalogue-run.ts";
import { makeLargeArchive } from "../bench/large-archive.ts";

/** No file that a phone waits for is larger. */
const mostBytes = 150_000;

describe("the grid of a large archive", () => {
  const catalogue = catalogueOf(makeLargeArchive(2_000));
  const { index, parts } = makeGrid(catalogue);

  test("has every tile of every pair in one square of its cone, and no other", () => {
    const counts = new Map<string, number>();
    for (const [cone, ofCone] of parts.entries())
      for (const [over, under, , , tiles] of ofCone.flatMap(({ rows }) => rows)) {
        const key = [
          index.glazes[over]?.id,
          index.glazes[under]?.id,
          index.cones.labels[cone],
        ].join();
        counts.set(key, (counts.get(key) ?? 0) + tiles);
      }
    const expected = new Map<string, number>();
    const add = (over: string, under: string, codes: readonly string[]) => {
      for (const code of codes) {
        const key = [over, under, catalogue.tileById.get(idKey(code))?.cone ?? ""].join();
        expected.set(key, (expected.get(key) ?? 0) + 1);
      }
    };
    for (const { over, under, tiles } of catalogue.pairs) add(over.id, under.id, tiles);
    for (const { id, alone } of catalogue.glazes) add(id, id, alone);
    expect(counts).toEqual(expected);
    expect(counts.size).toBeGreaterThan(500);
  });

  test("names the cones at which each two met", () => {
    const [over, under, ...cones] = index.tried.at(-1) ?? [0, 0];
    const pair = catalogue.pairs.find(
      (each) =>
        each.over.id === index.glazes[over]?.id && each.under.id === index.glazes[under]?.id,
    );
    const found = pair?.tiles.map((code) => catalogue.tileById.get(idKey(code))?.cone ?? "");
    expect(cones.map((cone) => index.cones.labels[cone])).toEqual([...new Set(found)]);
  });

  test("comes in files that are each small enough for a phone", () => {
    const large = makeGridScripts(catalogue)
      .map(({ path, content }) => [path, Buffer.byteLength(content)] as const)
      .filter(([, bytes]) => bytes > mostBytes);
    expect(large).toEqual([]);
  });
});

import { afterAll, beforeAll, expect, test } from "vitest";
import { startCounting, type Work, type WorkCounter } from "../bench/count-work.ts";

let counter: WorkCounter;

beforeAll(() => {
  counter = startCounting();
});
afterAll(() => counter.stop());

/** What each function did in all parts of a build but reading files and writing pages. */
async function workOn(tiles: number): Promise<Work> {
  const { makeLargeArchive } = await import("../bench/large-archive.ts");
  const { runParts } = await import("../bench/catalogue-run.ts");
  const archive = makeLargeArchive(tiles);
  return counter.count(() => runParts(archive, (_, work) => work()));
}

const [few, many] = [500, 2000];

/**
 * To look through all of them for each is four times as much for a tile. To sort is a little more,
 * and so is what grows until there are enough glazes for each to meet many others.
 */
const mostGrowth = 2.8;

test("no function is run through more often for a tile of a large archive", async () => {
  const small = await workOn(few);
  const large = await workOn(many);
  expect(large.size).toBeGreaterThan(500);
  const growing = [...large]
    .map(([name, times]) => ({
      name,
      each: times / many,
      growth: times / many / ((small.get(name) || 1) / few),
    }))
    .filter(({ each, growth }) => each > 0.5 && growth > mostGrowth)
    .map(
      ({ name, each, growth }) =>
        `${name}: ${each.toFixed(1)} times a tile, ${growth.toFixed(1)} times as often`,
    );
  expect(growing).toEqual([]);
});

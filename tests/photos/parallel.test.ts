/** Work over many pictures at once, and what is left of it when one goes wrong. */
import { setTimeout as wait } from "node:timers/promises";
import { expect, test } from "vitest";
import { inParallel } from "../../src/photos/parallel.ts";

test("results come in the order of the items, however long each takes", async () => {
  const done = await inParallel([30, 1, 10], 2, async (ms) => {
    await wait(ms);
    return ms * 2;
  });
  expect(done).toEqual([60, 2, 20]);
});

test("after an error no work is under way, and none is begun", async () => {
  let underWay = 0;
  const begun: number[] = [];
  const work = async (item: number) => {
    begun.push(item);
    underWay += 1;
    await wait(item === 0 ? 1 : 40);
    underWay -= 1;
    if (item === 0) throw new Error("the first went wrong");
  };
  await expect(inParallel([0, 1, 2, 3], 2, work)).rejects.toThrow("the first went wrong");
  expect({ underWay, begun }).toEqual({ underWay: 0, begun: [0, 1] });
});

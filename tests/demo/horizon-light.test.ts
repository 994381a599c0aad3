import { describe, expect, it } from "vitest";
import type { Daylight } from "../../src/demo/daylight.ts";
import { makeDaylight } from "../../src/demo/daylight.ts";
import { type Grid, makeGrid, num } from "../../src/demo/grid.ts";
import { lightView, type ReceivedLight } from "../../src/demo/horizon-light.ts";
import { studioHand } from "../../src/demo/studio-hand.ts";

const SIZE = 60;
const fromAbove = { right: [1, 0, 0], up: [0, 1, 0], toCamera: [0, 0, 1] } as const;
const level = () => [makeGrid(SIZE, SIZE), makeGrid(SIZE, SIZE)] as const;

/** An even sky, and a window that is a quarter of it, towards the viewer's right. */
const evenSky: Daylight = {
  window: ([x, y, z]) => (z > 0 && x > Math.abs(y) ? 1 : 0),
  room: ([, , z]) => (z > 0 ? 1 : 0),
};

function lit(depth: Grid, daylight = evenSky): ReceivedLight {
  return lightView(depth, level(), 1, fromAbove, daylight, 90);
}

function at(grid: Grid, column: number, row: number): number {
  return num(grid.data, row * SIZE + column);
}

/** A wall 20 high across the picture, left of its middle. */
function wall(): Grid {
  const depth = makeGrid(SIZE, SIZE);
  for (let row = 0; row < SIZE; row++) depth.data.fill(20, row * SIZE + 28, row * SIZE + 32);
  return depth;
}

describe("light on a view", () => {
  it("gives a level surface under an open, even sky all of it", () => {
    expect(at(lit(makeGrid(SIZE, SIZE)).room[2], 30, 30)).toBeCloseTo(1, 1);
  });

  it("gives a level surface under the demo's own window and room all of both", () => {
    const light = lit(makeGrid(SIZE, SIZE), makeDaylight(studioHand("evening")));
    const sum = at(light.room[2], 30, 30) + at(light.window[2], 30, 30);
    expect(sum).toBeGreaterThan(0.96);
    expect(sum).toBeLessThan(1.04);
  });

  it("puts the side of a wall that is turned from the window into shadow", () => {
    const light = lit(wall());
    const open = at(lit(makeGrid(SIZE, SIZE)).window[2], 30, 30);
    expect(at(light.window[2], 26, 30)).toBeLessThan(open * 0.2);
    expect(at(light.window[2], 40, 30)).toBeCloseTo(open, 2);
  });

  it("takes half of the sky from the foot of a high wall", () => {
    expect(at(lit(wall()).room[2], 32, 30)).toBeCloseTo(0.5, 1);
  });
});

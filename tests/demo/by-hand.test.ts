import { describe, expect, it } from "vitest";
import { reedStamps } from "../../src/demo/clay-stamps.ts";
import { findHandwriting, type Lettering, writeByHand } from "../../src/demo/lettering.ts";

/** What lies within half a millimetre of a stroke, on a raster of so many points a millimetre. */
function marks({ distance, width }: Lettering): string {
  let seen = "";
  for (let y = 4; y >= -1; y -= 0.25)
    for (let x = -1; x < width + 1; x += 0.25) seen += distance(x, y) < 0.5 ? "#" : ".";
  return seen;
}

describe("a code written by hand", () => {
  const hand = findHandwriting("evening");

  it("is the same on the same slip, and never the same on two", () => {
    const written = (slip: string) => marks(writeByHand("EV-101", 3, hand, slip));
    expect(written("EV-101")).toBe(written("EV-101"));
    expect(written("EV-101")).not.toBe(written("EV-102"));
  });

  it("tells one hand from another", () => {
    const other = findHandwriting("thursday");
    expect(marks(writeByHand("7", 3, hand, "slip"))).not.toBe(
      marks(writeByHand("7", 3, other, "slip")),
    );
  });

  it("has a mark for every letter and figure, and none for a gap", () => {
    for (const letter of "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-")
      expect(marks(writeByHand(letter, 3, hand, "slip")), letter).toContain("#");
    expect(marks(writeByHand(" ", 3, hand, "slip"))).not.toContain("#");
  });
});

it("a stamp goes into the clay nowhere twice alike, and never raises it", () => {
  const pressed = ["EV-112", "EV-131"].map((code) => {
    const stamps = reedStamps(code);
    const heights: number[] = [];
    for (let x = -28; x <= 28; x += 2)
      for (let y = -38; y <= 38; y += 2) heights.push(stamps(x, y));
    return heights;
  });
  expect(Math.max(...pressed.flat())).toBeLessThanOrEqual(0);
  expect(Math.min(...pressed.flat())).toBeLessThan(-0.5);
  expect(pressed[0]).not.toEqual(pressed[1]);
});

import { fc, test } from "@fast-check/vitest";
import { expect, it } from "vitest";
import { thinOut } from "../../src/colour/samples.ts";

const upTo = (length: number) => Array.from({ length }, (_, index) => index);

it("thinning out keeps a stripe's share, whatever its distance", () => {
  for (const distance of [2, 4, 5, 8, 10, 25, 100]) {
    const some = thinOut(upTo(8000), 800);
    const striped = some.filter((index) => index % distance < distance / 2);
    const whole = Math.ceil(distance / 2) / distance;
    expect(striped.length / some.length, `${distance}`).toBeCloseTo(whole, 1);
  }
});

test.prop([fc.nat({ max: 500 }), fc.integer({ min: 1, max: 100 })])(
  "thinning out takes only what is there, and no more than asked",
  (length, most) => {
    const some = thinOut(upTo(length), most);
    expect(some).toHaveLength(Math.min(length, most));
    expect(some.every((index) => index >= 0 && index < length)).toBe(true);
  },
);

import fc from "fast-check";
import { expect, test } from "vitest";
import { nextBlock } from "../../src/records/next-block.ts";
import { findCodes } from "../../src/terms/ids.ts";

const codes = (range: string) => findCodes(range) ?? [];

test("A block is followed by as many codes, in the same form", () => {
  expect(nextBlock(codes("EV-101..EV-104"), () => undefined)).toEqual(codes("EV-105..EV-108"));
  expect(nextBlock(["A-008", "A-009"], () => undefined)).toEqual(["A-010", "A-011"]);
  expect(nextBlock(["A-98", "A-99"], () => undefined)).toEqual(["A-100", "A-101"]);
});

test("A block begins behind whatever is taken, so that all of it is in one row", () => {
  const taken = (code: string) => (code === "EV-106" ? "taken" : undefined);
  expect(nextBlock(codes("EV-101..EV-104"), taken)).toEqual(codes("EV-107..EV-110"));
});

test("There is no block behind codes without a number, behind none, and where all is taken", () => {
  for (const before of [[], ["ABC"]]) expect(nextBlock(before, () => undefined)).toBeUndefined();
  expect(nextBlock(["A-1"], () => "taken")).toBeUndefined();
});

test("A block is as long as the one before it, free, and behind it, whatever is taken", () => {
  const numbers = fc.array(fc.integer({ min: 1, max: 60 }));
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 20 }), numbers, (size, taken) => {
      const before = codes(`A-1..A-${size}`);
      const block = nextBlock(before, (code) =>
        taken.includes(Number(code.slice(2))) ? "it is" : undefined,
      );
      const own = block?.map((code) => Number(code.slice(2))) ?? [];
      expect(own.length).toBe(size);
      expect(own).toEqual(own.map((_, i) => (own[0] ?? 0) + i));
      expect(own.every((number) => number > size && !taken.includes(number))).toBe(true);
    }),
  );
});

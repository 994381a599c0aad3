import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { compareIds, findCodes, foldCodes } from "../../src/terms/ids.ts";

const code = fc
  .tuple(fc.constantFrom("TB-", "tb-", "X", ""), fc.nat(30), fc.constantFrom(0, 2, 3))
  .map(([stem, number, width]) => `${stem}${String(number).padStart(width, "0")}`);

describe("codes in fewer words", () => {
  it("are ranges of what is next to each other", () => {
    expect(foldCodes(["TB-103", "TB-101", "TB-102", "TB-105", "own", "TB-1"])).toEqual([
      ...["own", "TB-1", "TB-101..TB-103", "TB-105"],
    ]);
    expect(foldCodes(["A-08", "A-09", "A-10", "A-9"])).toEqual(["A-08..A-09", "A-9..A-10"]);
    expect(foldCodes([])).toEqual([]);
  });

  test.prop([fc.array(code)])("are spelled out again as they were, each once", (codes) => {
    const again = foldCodes(codes).flatMap((range) => findCodes(range) ?? []);
    expect([...again].sort(compareIds)).toEqual([...new Set(codes)].sort(compareIds));
  });

  it("that end in more digits than can be counted stand by themselves", () => {
    const long = ["X-9007199254740993", "X-9007199254740994"];
    expect(foldCodes(long)).toEqual(long);
  });
});

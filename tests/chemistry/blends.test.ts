import { describe, expect, test } from "vitest";
import { findBlendSeries } from "../../src/chemistry/blends.ts";
import type { MixedGlaze } from "../../src/chemistry/mixed-glazes.ts";

const bought = (id: string): MixedGlaze => ({ id, name: id, making: { kind: "bought" } });

function blend(
  id: string,
  parts: Readonly<Record<string, number>>,
  by: "volume" | "weight" = "volume",
): MixedGlaze {
  const list = Object.entries(parts).map(([glaze, n]) => ({ glaze, parts: n }));
  return { id, name: id, making: { kind: "blend", by, parts: list } };
}

const corners = ["a", "b", "c"].map(bought);
const sharesOf = (series: ReturnType<typeof findBlendSeries>[number] | undefined) =>
  series?.members.map(({ glaze, shares }) => `${glaze} ${shares.join(" ")}`);

describe("blends", () => {
  test("of the same two glazes make a line, its ends among them, in order", () => {
    const [line, ...others] = findBlendSeries([
      blend("ab1", { b: 1, a: 3 }),
      blend("ab3", { A: 20, b: 60 }),
      blend("ab2", { a: 50, b: 50 }),
      ...corners,
    ]);
    expect(others).toEqual([]);
    expect(line).toMatchObject({ kind: "line", by: "volume", between: ["a", "b"] });
    expect(sharesOf(line)).toEqual([
      "a 1 0",
      "ab1 0.75 0.25",
      "ab2 0.5 0.5",
      "ab3 0.25 0.75",
      "b 0 1",
    ]);
  });

  test("of the same three make a triangle, its edges with it", () => {
    const series = findBlendSeries([
      ...corners,
      blend("ab", { a: 1, b: 1 }),
      blend("ab2", { a: 1, b: 3 }),
      blend("ac", { a: 1, c: 1 }),
      blend("abc", { a: 2, b: 1, c: 1 }),
    ]);
    expect(series.map(({ kind }) => kind)).toEqual(["triaxial"]);
    expect(sharesOf(series[0])).toEqual([
      "a 1 0 0",
      "ab 0.5 0.5 0",
      "abc 0.5 0.25 0.25",
      "ac 0.5 0 0.5",
      "ab2 0.25 0.75 0",
      "b 0 1 0",
      "c 0 0 1",
    ]);
  });

  test("put first the end or corner that most of them list first", () => {
    const told = (...blends: readonly MixedGlaze[]) =>
      findBlendSeries([...corners, ...blends])[0]?.between;
    const middle = blend("cab", { c: 1, a: 1, b: 1 });
    expect(told(blend("ab", { a: 1, b: 2 }), blend("ca", { c: 1, a: 1 }), middle)).toEqual([
      "c",
      "a",
      "b",
    ]);
    expect(told(blend("ba1", { b: 2, a: 1 }), blend("ba2", { b: 1, a: 2 }))).toEqual(["b", "a"]);
    expect(told(blend("ba1", { b: 2, a: 1 }), blend("ab2", { a: 2, b: 1 }))).toEqual(["a", "b"]);
  });

  test("of blends count by what they come to", () => {
    const [series] = findBlendSeries([
      ...corners,
      blend("ab", { a: 1, b: 1 }),
      blend("bc", { b: 1, c: 1 }),
      blend("middle", { ab: 1, bc: 1 }),
    ]);
    expect(sharesOf(series)).toContain("middle 0.25 0.5 0.25");
  });

  test("by weight and by volume are series of their own", () => {
    const series = findBlendSeries([
      ...corners,
      blend("v1", { a: 1, b: 2 }),
      blend("v2", { a: 2, b: 1 }),
      blend("w1", { a: 1, b: 2 }, "weight"),
      blend("w2", { a: 2, b: 1 }, "weight"),
    ]);
    expect(series.map(({ by }) => by).sort()).toEqual(["volume", "weight"]);
    expect(series.every(({ members }) => members.length === 4)).toBe(true);
  });

  test("standing alone, or leading back to themselves, make no series", () => {
    expect(findBlendSeries([...corners, blend("ab", { a: 1, b: 1 })])).toEqual([]);
    expect(
      findBlendSeries([
        ...corners,
        blend("x", { y: 1, a: 1 }),
        blend("y", { x: 1, a: 1 }),
        blend("abc", { a: 1, b: 1, c: 1 }),
      ]),
    ).toEqual([]);
  });
});

/** Which photograph shows which tile: codes that were read, and the order of the list between them. */
import { fc, test as propertyTest } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import {
  type Frame,
  inOrderOfNames,
  matchPhotographs,
  type TileInOrder,
} from "../../src/loads/match-photographs.ts";

/** `_` for a frame without a code, else its codes; names are IMG_1, IMG_2 … */
const shot = (...reads: readonly string[]): Frame[] =>
  reads.map((read, i) => ({ name: `IMG_${i + 1}`, read: read === "_" ? [] : read.split("+") }));
const list = (...codes: readonly string[]): TileInOrder[] =>
  codes.map((code) => ({ code: code.replace("!", ""), isAwaited: !code.endsWith("!") }));
const codesOf = (frames: readonly Frame[], order: readonly TileInOrder[]) =>
  matchPhotographs(frames, order).map((match) =>
    match.code === null ? match.because : `${match.code} ${match.by}`,
  );

describe("photographs are matched", () => {
  test("by the code in the frame, whatever the list says", () => {
    expect(codesOf(shot("B", "X"), list("A", "B"))).toEqual(["B read", "X read"]);
    expect(codesOf(shot("b"), [])).toEqual(["b read"]);
  });

  test("by the order of the list between two codes, where as many lie between them", () => {
    expect(codesOf(shot("_", "B", "_", "_", "E", "_"), list("A", "B", "C", "D", "E", "F"))).toEqual(
      ["A order", "B read", "C order", "D order", "E read", "F order"],
    );
    expect(codesOf(shot("_", "_"), list("A", "B"))).toEqual(["A order", "B order"]);
  });

  test("by the codes that still want a photograph, where there are as many of those", () => {
    expect(codesOf(shot("_", "_"), list("A", "B!", "C"))).toEqual(["A order", "C order"]);
    expect(codesOf(shot("_", "_", "_"), list("A", "B!", "C"))).toEqual([
      ...["A order", "B order", "C order"],
    ]);
  });

  test("not where the numbers differ, and the others are", () => {
    const frames = shot("_", "_", "B", "_", "D");
    expect(matchPhotographs(frames, list("A", "B", "C", "D", "E"))).toEqual([
      { code: null, because: "uneven", photographs: 2, codes: 1, after: null, before: "B" },
      { code: null, because: "uneven", photographs: 2, codes: 1, after: null, before: "B" },
      { code: "B", by: "read" },
      { code: "C", by: "order" },
      { code: "D", by: "read" },
    ]);
  });

  test("not where the codes that were read do not follow the list", () => {
    expect(codesOf(shot("C", "_", "A", "_"), list("A", "B", "C", "D"))).toEqual([
      ...["C read", "crossed", "A read", "crossed"],
    ]);
    expect(codesOf(shot("A", "_", "A", "_", "C"), list("A", "B", "C"))).toEqual([
      ...["A read", "uneven", "second", "B order", "C read"],
    ]);
  });

  test("not where two codes lie in one frame, and neither goes to another by order", () => {
    expect(codesOf(shot("A", "B+C", "_", "D"), list("A", "B", "C", "D"))).toEqual([
      ...["A read", "several", "crossed", "D read"],
    ]);
  });

  test("without a list by codes alone", () => {
    expect(codesOf(shot("_", "A"), [])).toEqual(["no-list", "A read"]);
  });

  test("the first of two of one code, and the second says which was the first", () => {
    expect(matchPhotographs(shot("A", "a"), [])[1]).toEqual({
      ...{ code: null, because: "second", of: "a", first: "IMG_1" },
    });
  });

  test("a photograph of a tile that is not in the list counts for nothing in the order", () => {
    expect(codesOf(shot("_", "X", "_"), list("A", "B"))).toEqual(["A order", "X read", "B order"]);
  });

  test("in the order in which a camera counts", () => {
    const names = ["IMG_10.JPG", "img_9.jpg", "IMG_2.JPG"].map((name) => ({ name }));
    expect(inOrderOfNames(names).map(({ name }) => name)).toEqual([
      ...["IMG_2.JPG", "img_9.jpg", "IMG_10.JPG"],
    ]);
  });
});

const letters = [..."ABCDEFGH"];
const frames = fc
  .array(fc.uniqueArray(fc.constantFrom(...letters), { maxLength: 2 }), { maxLength: 10 })
  .map((all) => all.map((read, i) => ({ name: `IMG_${i}`, read })));
const orders = fc
  .uniqueArray(fc.tuple(fc.constantFrom(...letters), fc.boolean()), { selector: ([code]) => code })
  .map((all) => all.map(([code, isAwaited]) => ({ code, isAwaited })));

describe("whatever was shot", () => {
  propertyTest.prop([frames, orders])(
    "each has a code or a reason, none is given twice, and what was read holds",
    (shots, order) => {
      const matches = matchPhotographs(shots, order);
      expect(matches.length).toBe(shots.length);
      const given = matches.flatMap(({ code }) => code ?? []);
      expect(new Set(given).size).toBe(given.length);
      const read = new Set(shots.flatMap((each) => each.read));
      for (const [i, match] of matches.entries()) {
        const own = shots[i]?.read ?? [];
        if (match.code === null) expect(match.because).not.toBe("");
        else if (match.by === "read") expect(own).toEqual([match.code]);
        else {
          expect(own).toEqual([]);
          expect(read.has(match.code)).toBe(false);
        }
      }
      for (const code of new Set(
        shots.flatMap((each) => (each.read.length === 1 ? each.read : [])),
      ))
        expect(matches).toContainEqual({ code, by: "read" });
    },
  );

  propertyTest.prop([fc.nat(8), orders])(
    "what goes by order alone is in the order of the list",
    (number, order) => {
      const places = matchPhotographs(shot(...Array<string>(number).fill("_")), order).flatMap(
        (match) => order.findIndex(({ code }) => code === match.code),
      );
      const given = places.filter((place) => place >= 0);
      expect(given).toEqual([...given].sort((a, b) => a - b));
      expect([0, number]).toContain(given.length);
    },
  );
});

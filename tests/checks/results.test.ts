import { describe, expect, it } from "vitest";
import { coat, codesIn, fired, result, tell, tile } from "./support.ts";

const twiceFired = [fired("b-1", "bisque"), coat("soot"), fired("g-1"), fired("g-2")];

describe("a recorded tile", () => {
  it("has a photograph of its result", () => {
    const bare = tile("TB-1", [coat("soot")], { result: [result()] }, { pictures: [] });
    expect(tell({ tiles: [bare] })).toMatchInlineSnapshot(`
      "error result-without-photograph tiles/TB-1.md › result
      TB-1 has a result, and there is no photograph of it
      Put a photograph named TB-1.jpg (or png, webp, avif, tiff, heic) beside the record. If the tile did not come back whole, write its fate instead."
    `);
  });

  it("is not served by a photograph from before or of its back", () => {
    const pictures = [
      { role: "before", file: "tiles/TB-1.before.jpg" },
      { role: "back", file: "tiles/TB-1.back.jpg" },
    ] as const;
    const bare = tile("TB-1", [coat("soot")], { result: [result()] }, { pictures });
    expect(codesIn({ tiles: [bare] })).toEqual(["result-without-photograph"]);
  });

  it("with its photograph is whole; waiting and lost tiles need none", () => {
    const whole = tile("TB-1", [coat("soot")], { result: [result()] });
    const waiting = tile("TB-2", [coat("soot")]);
    const lost = tile(
      "TB-3",
      [coat("soot")],
      { result: [result()], fate: "stuck" },
      { pictures: [] },
    );
    expect(codesIn({ tiles: [whole, waiting, lost] })).toEqual([]);
  });
});

describe("what a result describes", () => {
  const described = (...results: ReturnType<typeof result>[]) =>
    tile("TB-1", twiceFired, { result: results });

  it("is a glaze firing of this tile", () => {
    expect(tell({ tiles: [described(result("g-9"))] })).toMatchInlineSnapshot(`
      "error result-after-nothing tiles/TB-1.md › result › 0 › after
      “g-9” is not a glaze firing of TB-1
      Choose from its firings: g-1, g-2."
    `);
    expect(codesIn({ tiles: [described(result("G-2"))] })).toEqual([]);
  });

  it("is no bisque", () => {
    expect(codesIn({ tiles: [described(result("b-1"))] })).toEqual(["result-after-nothing"]);
  });

  it("may be any other kind of firing", () => {
    for (const kind of ["once", "onglaze", "raku"] as const) {
      const other = tile("TB-1", [coat("soot"), fired("x", kind)], { result: [result("x")] });
      expect(codesIn({ tiles: [other] })).toEqual([]);
    }
  });

  it("cannot be named where no firing of the tile has an id", () => {
    const unnamed = tile("TB-1", [coat("soot"), fired(null)], { result: [result("g-1")] });
    expect(tell({ tiles: [unnamed] })).toMatchInlineSnapshot(`
      "error result-after-nothing tiles/TB-1.md › result › 0 › after
      “g-1” is not a glaze firing of TB-1
      Name the firing in its layers first, as “- fired: ” and the firing's id, or put the tile into the firing's load list."
    `);
  });

  it("is said by each of several results", () => {
    expect(tell({ tiles: [described(result("g-1"), result())] })).toMatchInlineSnapshot(`
      "error result-of-which-firing tiles/TB-1.md › result › 1
      TB-1 has 2 results, and this one does not say which firing it came after
      Add “after:” with the id of the glaze firing that it describes."
    `);
    expect(codesIn({ tiles: [described(result("g-1"), result("g-2"))] })).toEqual([]);
  });

  it("is not described twice", () => {
    expect(tell({ tiles: [described(result("g-1"), result("G-1"))] })).toMatchInlineSnapshot(`
      "error result-of-which-firing tiles/TB-1.md › result › 1 › after
      TB-1 has more than one result after G-1
      Keep one result for each glaze firing; what was seen on another day goes into “later”."
    `);
  });

  it("need not be said by a single result", () => {
    expect(codesIn({ tiles: [described(result())] })).toEqual([]);
  });
});

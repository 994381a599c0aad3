import { describe, expect, it } from "vitest";
import { coat, codesIn, set, tell, tile } from "./support.ts";

const steps = [coat("soot")];

describe("former codes", () => {
  const formerly = (id: string, ...codes: string[]) => tile(id, steps, { formerly: codes });

  it("one that no other tile has leads on", () => {
    expect(
      codesIn({ tiles: [formerly("TB-1", "EP-01", "EP-02"), formerly("TB-2", "EP-03")] }),
    ).toEqual([]);
  });

  it("one that is another tile's code, in whatever case, leads nowhere", () => {
    expect(tell({ tiles: [tile("TB-1", steps), formerly("TB-2", "tb-1")] })).toMatchInlineSnapshot(`
      "error former-code-taken tiles/TB-2.md › formerly › 0
      “tb-1” is the code of another tile, tiles/TB-1.md
      Take it out, or write the code that was on this tile's old label: that address leads on to one tile only."
    `);
  });

  it("one that two tiles had leads nowhere", () => {
    const tiles = [formerly("TB-1", "EP-01"), formerly("TB-2", "EP-02", "ep-01")];
    expect(tell({ tiles })).toMatchInlineSnapshot(`
      "error former-code-taken tiles/TB-2.md › formerly › 1
      “ep-01” is also a former code of tiles/TB-1.md
      Take it out, or write the code that was on this tile's old label: that address leads on to one tile only."
    `);
  });

  it("one that stands twice, or is the tile's own, is one too many", () => {
    expect(tell({ tiles: [formerly("TB-1", "EP-01", "EP-01", "TB-1")] })).toMatchInlineSnapshot(`
      "error former-code-taken tiles/TB-1.md › formerly › 1
      “EP-01” is here twice
      Take it out, or write the code that was on this tile's old label: that address leads on to one tile only.

      error former-code-taken tiles/TB-1.md › formerly › 2
      “TB-1” is this tile's code now, and “formerly” is for older ones
      Take it out, or write the code that was on this tile's old label: that address leads on to one tile only."
    `);
  });

  it("one that no tile can have had would overwrite a page", () => {
    expect(tell({ tiles: [formerly("TB-1", "index", "../x")] })).toMatchInlineSnapshot(`
      "error former-code-taken tiles/TB-1.md › formerly › 0
      “index” cannot have been a tile's code: “index” is the name of the page that lists them all
      Take it out, or write the code that was on this tile's old label: that address leads on to one tile only.

      error former-code-taken tiles/TB-1.md › formerly › 1
      “../x” cannot have been a tile's code: a name may hold letters, digits, “-”, “_” and “.”, and begins with a letter or digit
      Take it out, or write the code that was on this tile's old label: that address leads on to one tile only."
    `);
  });
});

describe("reserved codes", () => {
  const thursday = set("thursday", { codes: [["TB-1"], ["TB-7", "TB-8", "TB-9"]] });

  it("two sets do not reserve the same codes", () => {
    const friday = set("friday", { codes: [["tb-7", "TB-8", "TB-9", "TB-10"], ["TB-1"]] });
    expect(tell({ sets: [thursday, friday] })).toMatchInlineSnapshot(`
      "error code-reserved-twice tiles/friday/set.md › codes › 0
      3 codes, tb-7 to TB-9, are reserved by the set thursday too
      Give each set codes of its own, in one of the two.

      error code-reserved-twice tiles/friday/set.md › codes › 1
      TB-1 is reserved by the set thursday too
      Give each set codes of its own, in one of the two."
    `);
  });

  it("two of them are named both", () => {
    const friday = set("friday", { codes: [["TB-8", "TB-9", "TB-10"]] });
    expect(tell({ sets: [thursday, friday] })).toContain("TB-8 and TB-9 are reserved");
  });

  it("sets with codes of their own do not meet, and a set may name a code twice", () => {
    const friday = set("friday", { codes: [["TB-10"], ["TB-10"]] });
    expect(codesIn({ sets: [thursday, friday] })).toEqual([]);
  });

  it("a tile elsewhere with a reserved code is told", () => {
    const tiles = [tile("tb-8", steps)];
    expect(tell({ sets: [thursday], tiles })).toMatchInlineSnapshot(`
      "warning code-of-another-set tiles/tb-8.md
      The code tb-8 is reserved for the set thursday, and this tile is not in it
      Move the tile into that set's folder, or make the set's “codes” end before it."
    `);
    expect(
      codesIn({ sets: [thursday], tiles: [tile("TB-8", steps, {}, { set: "friday" })] }),
    ).toEqual(["code-of-another-set"]);
  });

  it("a tile of that set, or with a code nobody reserved, is where it belongs", () => {
    const tiles = [tile("TB-8", steps, {}, { set: "Thursday" }), tile("TB-2", steps)];
    expect(codesIn({ sets: [thursday], tiles })).toEqual([]);
  });
});

describe("a control tile", () => {
  it("whose code is reserved but that is not in the archive is told", () => {
    const sets = [set("thursday", { control: "TB-100", codes: [["TB-99", "TB-100"]] })];
    expect(tell({ sets })).toMatchInlineSnapshot(`
      "warning control-missing tiles/thursday/set.md › control
      The control tile TB-100 is not in the archive
      Write a record for it, or name the tile whose twin goes into every load."
    `);
  });

  it("whose code nobody reserved is told of as unknown, and not a second time", () => {
    expect(codesIn({ sets: [set("thursday", { control: "TB-100" })] })).toEqual([]);
  });

  it("that is there, or was never asked for, is not", () => {
    const sets = [set("thursday", { control: "tb-100" }), set("friday")];
    expect(codesIn({ sets, tiles: [tile("TB-100", steps)] })).toEqual([]);
  });
});

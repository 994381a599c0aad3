import { fc, test as propertyTest } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { formatView, parseView, sortOf } from "../../../src/browser/wall/address.ts";
import { findCode, findNames } from "../../../src/browser/wall/words.ts";
import type { Facets } from "../../../src/publish/facets-file.ts";

const column = (keys: readonly string[]) => ({ keys, labels: keys, combinations: [], tiles: [] });
const facets = {
  codes: ["EV-103", "TB-014"],
  urls: ["tiles/ev-103.html", "tiles/tb-014.html"],
  titles: [0, 1],
  names: ["Chalk over Tidewrack", "Soot"],
  lab: [
    [4210, 5030],
    [-310, 0],
    [1200, 0],
  ],
  columns: { cone: column(["06", "05-half", "6"]), top: column(["soot", "tidewrack"]) },
} as unknown as Facets;

describe("a view in an address", () => {
  test("is read back as it was written", () => {
    const view = {
      choice: new Map([["cone", 1] as const, ["top", 0] as const]),
      words: "blue & 6",
    };
    expect(formatView(view, facets)).toBe("?words=blue+%26+6&cone=05-half&top=soot");
    expect(parseView(formatView(view, facets), facets)).toEqual(view);
  });

  test("keeps 06 and 6 apart", () => {
    expect(parseView("?cone=06", facets).choice.get("cone")).toBe(0);
    expect(parseView("?cone=6", facets).choice.get("cone")).toBe(2);
  });

  test("is no addition to the address for the whole wall", () => {
    expect(formatView({ choice: new Map(), words: "" }, facets)).toBe("");
  });

  test("leaves out what the archive does not know", () => {
    expect(parseView("?cone=99&colour=plaid&top=soot", facets)).toEqual({
      choice: new Map([["top", 0]]),
      words: "",
    });
  });
});

describe("a colour in an address", () => {
  const nearOf = (search: string) => parseView(search, facets).near;

  propertyTest.prop([fc.integer({ min: 0, max: 0xffffff })])(
    "is read back as it was written",
    (number) => {
      const hex = `#${number.toString(16).padStart(6, "0")}`;
      const view = { choice: new Map([["cone", 2] as const]), words: "blue", near: { hex } };
      expect(formatView(view, facets)).toBe(`?words=blue&cone=6&near=${hex.slice(1)}`);
      expect(parseView(formatView(view, facets), facets)).toEqual(view);
    },
  );

  test("of a tile is its code, in whichever case it comes", () => {
    const view = { choice: new Map(), words: "", near: { tile: 1 } };
    expect(formatView(view, facets)).toBe("?like=TB-014");
    for (const like of ["TB-014", "tb-014", "Tb-014"])
      expect(nearOf(`?like=${like}`)).toEqual({ tile: 1 });
  });

  test("may be written in capitals", () => {
    expect(nearOf("?near=54A9FF")).toEqual({ hex: "#54a9ff" });
  });

  test("is left out where it is no colour, or that of no measured tile", () => {
    for (const near of ["", "54696", "5469666", "54696g", "%23546966", "red", "+546966"])
      expect(nearOf(`?near=${near}`), near).toBeUndefined();
    for (const like of ["", "TB-01", "TB014", "TB-015"])
      expect(nearOf(`?like=${like}`), like).toBeUndefined();
    const unmeasured = { ...facets, lab: facets.lab.map(() => [null, null]) } as unknown as Facets;
    expect(parseView("?like=TB-014", unmeasured).near).toBeUndefined();
  });

  test("is that of the tile where both are given and the tile is known", () => {
    expect(nearOf("?near=546966&like=ev-103")).toEqual({ tile: 0 });
    expect(nearOf("?near=546966&like=ev-999")).toEqual({ hex: "#546966" });
  });
});

describe("an order in an address", () => {
  const colour = { hex: "#546966" };

  test("is read back as it was written", () => {
    const view = { choice: new Map([["cone", 1] as const]), words: "", sort: "run" as const };
    expect(formatView(view, facets)).toBe("?cone=05-half&sort=run");
    expect(parseView("?cone=05-half&sort=run", facets)).toEqual(view);
  });

  test("is left out where the wall has it by itself, or cannot have it", () => {
    for (const search of ["?sort=code", "?sort=near", "?sort=sideways", "?sort="])
      expect(formatView(parseView(search, facets), facets), search).toBe("");
    expect(formatView(parseView("?near=546966&sort=near", facets), facets)).toBe("?near=546966");
  });

  test("is by code beside a colour where it says so", () => {
    const view = parseView("?near=546966&sort=code", facets);
    expect(view).toEqual({ choice: new Map(), words: "", near: colour, sort: "code" });
    expect(formatView(view, facets)).toBe("?near=546966&sort=code");
  });

  test("is that of the colour where one is asked for, else by code, unless one was chosen", () => {
    expect(sortOf({})).toBe("code");
    expect(sortOf({ near: colour })).toBe("near");
    expect(sortOf({ near: colour, sort: "date" })).toBe("date");
    expect(sortOf({ sort: "near" })).toBe("code");
  });
});

describe("a code that is typed", () => {
  test("finds its tile however it is written", () => {
    for (const typed of ["EV-103", "ev 103", " ev103 ", "Ev_103"])
      expect(findCode(facets, typed)).toBe("tiles/ev-103.html");
  });

  test("finds none where it is not whole", () => {
    expect(findCode(facets, "EV-1")).toBeUndefined();
    expect(findCode(facets, "  ")).toBeUndefined();
  });

  test("is looked for in codes and names, every word of it", () => {
    expect([...findNames(facets, "tide chalk")]).toEqual([1, 0]);
    expect([...findNames(facets, "o")]).toEqual([1, 1]);
    expect([...findNames(facets, "soot chalk")]).toEqual([0, 0]);
  });
});

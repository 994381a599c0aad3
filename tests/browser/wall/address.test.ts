import { describe, expect, test } from "vitest";
import { formatView, parseView } from "../../../src/browser/wall/address.ts";
import { findCode, findNames } from "../../../src/browser/wall/words.ts";
import type { Facets } from "../../../src/publish/facets-file.ts";

const column = (keys: readonly string[]) => ({ keys, labels: keys, combinations: [], tiles: [] });
const facets = {
  codes: ["EV-103", "TB-014"],
  urls: ["tiles/ev-103.html", "tiles/tb-014.html"],
  titles: [0, 1],
  names: ["Chalk over Tidewrack", "Soot"],
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

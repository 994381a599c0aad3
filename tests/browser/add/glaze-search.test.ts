import { describe, expect, it } from "vitest";
import { findGlazes } from "../../../src/browser/add/glaze-search.tsx";
import { eveningSite } from "./site.ts";

describe("a glaze by a few letters", () => {
  it("is found whatever its case, the beginnings of names and what is in stock first", () => {
    const found = (wanted: string) => findGlazes(eveningSite.glazes, wanted).map(({ id }) => id);
    expect(found("so")).toEqual(["soot", "old-soot"]);
    expect(found("ha")).toEqual(["chalk"]);
    expect(found("zebra")).toEqual([]);
  });
});

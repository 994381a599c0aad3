import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { blendUrl, kilnUrl, makerUrl, nameSlugs, pairUrl } from "../../src/catalogue/addresses.ts";
import { findIdFault, idKey } from "../../src/terms/ids.ts";

const id = fc
  .oneof(
    fc.stringMatching(/^[ab][ab-]{0,7}$/u),
    fc.constantFrom("over", "by-volume", "a--over--b", "a--b", "B".repeat(72), "é".repeat(36)),
    fc.string({ unit: "grapheme", minLength: 1, maxLength: 90 }),
  )
  .filter((word) => findIdFault(word) === undefined);
const ends = fc.uniqueArray(id, { minLength: 2, maxLength: 3, selector: idKey });
const by = fc.constantFrom("volume" as const, "weight" as const);

/** What common file systems take as one name. */
const mostBytes = 255;

function expectStorable(url: string): void {
  for (const part of url.split("/"))
    expect(new TextEncoder().encode(part).length).toBeLessThanOrEqual(mostBytes);
}

describe("addresses", () => {
  it("read as they always did where ids have no hyphens in a row", () => {
    expect(pairUrl("Tidewrack", "soot-2")).toBe("pairs/tidewrack--over--soot-2.html");
    expect(blendUrl(["chalk", "soot"], "weight")).toBe("blends/chalk--soot.html");
    expect(blendUrl(["chalk", "soot", "iron-red"], "volume")).toBe(
      "blends/chalk--soot--iron-red--by-volume.html",
    );
  });

  it("keep apart what joined names would run together", () => {
    expect(blendUrl(["a--b", "c"], "weight")).toBe("blends/a~b--c.html");
    expect(blendUrl(["a", "b--c"], "weight")).toBe("blends/a--b~c.html");
    expect(blendUrl(["a", "b", "by-volume"], "weight")).toBe("blends/a--b--~by-volume.html");
  });

  it("of pairs are one for each pair, and can be stored", () => {
    fc.assert(
      fc.property(fc.tuple(id, id), fc.tuple(id, id), (one, other) => {
        const same = one.every((word, i) => idKey(word) === idKey(other[i] ?? ""));
        expect(pairUrl(...one) === pairUrl(...other)).toBe(same);
        expectStorable(pairUrl(...one));
      }),
      { numRuns: 2000 },
    );
  });

  it("of blends are one for each series, and can be stored", () => {
    const series = fc.tuple(ends, by);
    fc.assert(
      fc.property(series, series, ([one, oneBy], [other, otherBy]) => {
        const same = oneBy === otherBy && one.map(idKey).join(" ") === other.map(idKey).join(" ");
        expect(blendUrl(one, oneBy) === blendUrl(other, otherBy)).toBe(same);
        expectStorable(blendUrl(one, oneBy));
      }),
      { numRuns: 2000 },
    );
  });

  it("of people are their own, whatever the name", () => {
    const slugFor = nameSlugs("maker");
    const names = ["Rowan K.", "Rowan K.", "Index", "con", "…", "w".repeat(260), "w".repeat(261)];
    expect(names.map(slugFor)).toEqual([
      "rowan-k",
      "rowan-k-2",
      "index-2",
      "maker-con",
      "maker",
      "w".repeat(72),
      `${"w".repeat(72)}-2`,
    ]);
  });

  it("of any names differ and can be stored", () => {
    const name = fc.oneof(
      fc.constantFrom("Index", "index", "Con", "a-2", "a", "釉".repeat(90)),
      fc.string({ unit: "grapheme", maxLength: 300 }),
    );
    fc.assert(
      fc.property(fc.array(name, { maxLength: 12 }), (names) => {
        const slugs = names.map(nameSlugs("kiln"));
        expect(new Set(slugs).size).toBe(names.length);
        expect(slugs).not.toContain("index");
        for (const slug of slugs) {
          expect(slug).toMatch(/^[^/\\:*?"<>|.-][^/\\:*?"<>|]*$/u);
          expectStorable(makerUrl(slug));
          expectStorable(kilnUrl(slug));
        }
      }),
    );
  });
});

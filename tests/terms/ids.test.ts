import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compareIds, findCodes, findIdFault, idKey, idSlug } from "../../src/terms/ids.ts";
import { longestRange } from "../../src/terms/limits.ts";

const usable = fc
  .string({ unit: "grapheme", minLength: 1, maxLength: 12 })
  .filter((id) => findIdFault(id) === undefined);

describe("an id", () => {
  it("is the same whatever its case and Unicode form", () => {
    expect(idKey("CRE\u0300ME")).toBe(idKey("crème"));
    expect(idKey("TB-014")).toBe("tb-014");
    expect(idKey("\u1fbc\u0301")).toBe(idKey(idKey("\u1fbc\u0301")));
  });

  it("has one key, and the key of a key is itself", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme" }), (id) => {
        expect(idKey(idKey(id))).toBe(idKey(id));
        expect(idKey(id.normalize("NFD"))).toBe(idKey(id));
      }),
    );
  });

  it.each([
    "TB-014",
    "tb_14.2",
    "7",
    "crème",
    "crème".normalize("NFD"),
    "釉",
    "Ω-1",
    "a..b",
    "con-1",
    "index-2",
  ])("may be %o", (id) => expect(findIdFault(id)).toBeUndefined());

  it.each([
    ["index", "“index” is the name of the page that lists them all"],
    ["INDEX", "“index” is the name of the page that lists them all"],
    ["con", "Windows cannot store a file named “con”"],
    ["LPT1.glaze", "Windows cannot store a file named “LPT1.glaze”"],
    ["tb.", "a name may not end in a full stop"],
    ...["a".repeat(73), "釉".repeat(25)].map((id) => [
      id,
      "it is too long: a name may have 72 letters, and fewer where they are not those of English",
    ]),
    ...[
      "",
      "-x",
      ".x",
      "_x",
      "a b",
      "a/b",
      "a\\b",
      "a:b",
      "a?b",
      "a\u0000",
      "a\n",
      "\u202ea",
      "👍",
      "a%20b",
      "a&b",
      "<a>",
      "̀a",
    ].map((id) => [
      id,
      "a name may hold letters, digits, “-”, “_” and “.”, and begins with a letter or digit",
    ]),
  ])("may not be %o", (id, why) => expect(findIdFault(id)).toBe(why));

  it("that can be used makes a file's name that is its own and no other's", () => {
    fc.assert(
      fc.property(usable, usable, (a, b) => {
        expect(idSlug(a)).toBe(idKey(a));
        expect(idSlug(a) === idSlug(b)).toBe(idKey(a) === idKey(b));
        expect(encodeURIComponent(idSlug(a))).not.toMatch(/%(2F|5C|3A|3F|23)/u);
      }),
    );
  });
});

describe("the order of ids", () => {
  it("is that of a reader: numbers by their value, case and accents last", () => {
    expect(["TB-10", "tb-9", "EV-1", "TB-9a", "ärmel", "b", "a"].toSorted(compareIds)).toEqual([
      "a",
      "ärmel",
      "b",
      "EV-1",
      "tb-9",
      "TB-9a",
      "TB-10",
    ]);
  });

  it("is total: ids are equal only where they are the same id", () => {
    const ids = fc.string({ unit: "grapheme" });
    fc.assert(
      fc.property(ids, ids, ids, (a, b, c) => {
        expect(compareIds(a, b) === 0).toBe(idKey(a) === idKey(b));
        expect(Math.sign(compareIds(a, b)) + Math.sign(compareIds(b, a))).toBe(0);
        const [x, y, z] = [a, b, c].toSorted(compareIds) as [string, string, string];
        expect(compareIds(x, y)).toBeLessThanOrEqual(0);
        expect(compareIds(y, z)).toBeLessThanOrEqual(0);
        expect(compareIds(x, z)).toBeLessThanOrEqual(0);
      }),
    );
  });
});

describe("codes", () => {
  it("spell a range out, noughts and all", () => {
    expect(findCodes("TB-101..TB-103")).toEqual(["TB-101", "TB-102", "TB-103"]);
    expect(findCodes("TB-099 .. tb-101")).toEqual(["TB-099", "TB-100", "TB-101"]);
    expect(findCodes("8..10")).toEqual(["8", "9", "10"]);
    expect(findCodes("TB-014")).toEqual(["TB-014"]);
    expect(findCodes("kiln-2-7..kiln-2-7")).toEqual(["kiln-2-7"]);
  });

  it.each([
    "",
    "..",
    "TB-1..",
    "..TB-3",
    "TB-3..TB-1",
    "TB-1..EV-3",
    "TB..TC",
    "TB-1..3",
    "TB-1..TB-2..TB-3",
    `TB-1..TB-${longestRange + 1}`,
    "1..99999999999999999999",
  ])("%o is no range", (text) => expect(findCodes(text)).toBeUndefined());

  it("are as many as the two ends lie apart, each a number higher than the last", () => {
    const end = fc.nat({ max: 99_999 });
    fc.assert(
      fc.property(
        end,
        fc.nat({ max: longestRange - 1 }),
        fc.nat({ max: 6 }),
        (first, more, width) => {
          const code = (n: number) => `TB-${String(n).padStart(width, "0")}`;
          const codes = findCodes(`${code(first)}..${code(first + more)}`);
          expect(codes).toHaveLength(more + 1);
          expect(codes?.map((found) => Number(found.slice(3)))).toEqual(
            Array.from({ length: more + 1 }, (_, i) => first + i),
          );
          expect(codes?.at(0)).toBe(code(first));
          expect(codes?.at(-1)).toBe(code(first + more));
        },
      ),
    );
  });
});

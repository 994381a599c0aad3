import { fc, test as propertyTest } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { clayUrl, pairingsUrl, pairUrl, turnedUrl } from "../../src/catalogue/addresses.ts";
import { findIdFault } from "../../src/terms/ids.ts";

/** Names of records that are as like the addresses of further pages as names can be. */
const anyId = fc
  .string({ unit: fc.constantFrom("a", "b", "-", "_", ".", "2", "3"), minLength: 1, maxLength: 8 })
  .filter((id) => findIdFault(id) === undefined);
const anyPage = fc.integer({ min: 0, max: 40 });

describe("the address of a further page of a list", () => {
  test("is that of the first with a number", () => {
    expect(turnedUrl("clays/buff.html", 0)).toBe("clays/buff.html");
    expect(turnedUrl("clays/buff.html", 1)).toBe("clays/buff~2.html");
    expect(turnedUrl("index.html", 2)).toBe("wall-3.html");
    expect(turnedUrl("pairs/sky--over--soot.html", 1)).toBe("pairs/sky--over--soot--2.html");
    expect(pairingsUrl("glazes/sky.html", "over")).toBe("glazes/sky~over.html");
  });

  propertyTest.prop([anyId, anyId, anyPage, anyPage])(
    "is that of no other record, nor of a page of another list",
    (a, b, first, second) => {
      if (a === b && first === second) return;
      expect(turnedUrl(clayUrl(a), first)).not.toBe(turnedUrl(clayUrl(b), second));
    },
  );

  propertyTest.prop([anyId, anyId, anyId, anyId, anyPage, anyPage])(
    "of a pair is that of no other pair",
    (a, b, c, d, first, second) => {
      if (a === c && b === d && first === second) return;
      expect(turnedUrl(pairUrl(a, b), first)).not.toBe(turnedUrl(pairUrl(c, d), second));
    },
  );
});

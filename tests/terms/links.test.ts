import { randomBytes } from "node:crypto";
import { describe, expect, it } from "vitest";
import { drawLink } from "../../src/commands/random-link.ts";
import { findLinkFault, longestLink } from "../../src/terms/links.ts";

describe("the link of an unlisted set", () => {
  it.each([
    ["quiet-water", "it has fewer than 22 letters and digits"],
    ["", "it has fewer than 22 letters and digits"],
    [`${"k7wq2mzt4hx3vb5nrd6yfp2cja".repeat(3)}`, "it has more than 64 letters and digits"],
    [
      "k7wq2mzt4hx3vb5nrd6yfp2c/../x",
      "only the letters a to z, digits, “-” and “_” can stand in it, and a letter or digit first",
    ],
    [
      "_k7wq2mzt4hx3vb5nrd6yfp2c",
      "only the letters a to z, digits, “-” and “_” can stand in it, and a letter or digit first",
    ],
    [
      "k7wq2mzt4hx3vb5nrd6yfp\u0131cj",
      "only the letters a to z, digits, “-” and “_” can stand in it, and a letter or digit first",
    ],
    [
      "the-evening-class-of-autumn-2026",
      "it is made of words and numbers that somebody may think of",
    ],
    ["eveningclassautumntwentysix", "it is made of words and numbers that somebody may think of"],
    ["2026091420261214202611", "it is made of words and numbers that somebody may think of"],
    ["pottery12-evening26-class1", "it is made of words and numbers that somebody may think of"],
    ["a1b2a1b2a1b2a1b2a1b2a1b2", "the same letters come again and again in it"],
    ["x9k2mtwqfx9k2mtwqfx9k2mtwqf", "the same letters come again and again in it"],
    ["abcdefghijklmnop0123456789", "its letters stand in a row, as in abc or 123"],
    ["1abcdefghijklmnopqrstuvwxyz", "its letters stand in a row, as in abc or 123"],
  ])("%o is refused: %s", (link, why) => expect(findLinkFault(link)).toBe(why));

  it("may be of any letters and digits drawn at random", () => {
    const refused = Array.from({ length: 2000 }, () =>
      randomBytes(17).toString("base64url"),
    ).filter((link) => /^[a-z0-9]/iu.test(link) && /\d/u.test(link) && findLinkFault(link));
    expect(refused.length).toBeLessThan(40);
  });

  it("as it is drawn here passes, in small letters and digits, and never comes twice", () => {
    const drawn = Array.from({ length: 500 }, drawLink);
    for (const link of drawn) {
      expect(link).toMatch(/^[a-z2-7]{26}$/u);
      expect(findLinkFault(link)).toBeUndefined();
    }
    expect(new Set(drawn).size).toBe(drawn.length);
    expect(26).toBeLessThanOrEqual(longestLink);
  });
});

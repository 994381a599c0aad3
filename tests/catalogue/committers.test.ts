import { describe, expect, test } from "vitest";
import { committerFinder } from "../../src/catalogue/committers.ts";
import type { MakerRecord } from "../../src/records/studio.ts";
import { writtenBySentence } from "../../templates/words/site/record.ts";
import { archive, coat, glaze, set, tile } from "../checks/support.ts";

function finder(makers: Readonly<Record<string, MakerRecord>>, parts = {}) {
  const whole = archive({ glazes: [glaze("soot", { name: "Soot" })], ...parts });
  return committerFinder({ ...whole, studio: { ...whole.studio, makers } });
}

const told = (by: ReturnType<ReturnType<typeof finder>>) =>
  writtenBySentence({ by, state: "as-committed", first: null, last: null });

describe("who wrote a record down", () => {
  const makers: Readonly<Record<string, MakerRecord>> = {
    m1: { name: "Wren Ashdown", shown: "yes", commitsAs: ["wren", "W. Ashdown"] },
    m2: { name: "Bram Tolliver", shown: "initials" },
    m3: { name: "Hesper Lund", shown: "no" },
    m4: { name: "Nobody Said" },
    m5: { shown: "yes", commitsAs: ["forgotten"] },
  };

  test("is told by name or initials, as far as each maker lets it be told", () => {
    const find = finder(makers);
    expect(find(["Wren Ashdown"])).toEqual({ names: ["Wren Ashdown"], others: false });
    expect(find(["W.  Ashdown ", "wren"])).toEqual({ names: ["Wren Ashdown"], others: false });
    expect(told(find(["Bram Tolliver", "wren"]))).toBe("Written down by B. T. and Wren Ashdown.");
    expect(told(find(["Bram Tolliver"]))).toBe("Written down by B. T.");
  });

  test("is not told of anyone else, nor how many they are", () => {
    const find = finder(makers);
    for (const name of ["Hesper Lund", "Nobody Said", "forgotten", "Zed", "", "wren ashdown"])
      expect(find([name])).toBeNull();
    const one = told(find(["wren", "Hesper Lund"]));
    expect(one).toBe("Written down by Wren Ashdown, among others.");
    expect(told(find(["Zed", "wren", "Hesper Lund", "forgotten"]))).toBe(one);
  });

  test("is told of a name that two makers have only where both let it be told, as little as either does", () => {
    const alike = (shown: MakerRecord["shown"]) =>
      finder({ ...makers, m6: { name: "Someone", shown, commitsAs: ["Wren Ashdown"] } });
    expect(alike("no")(["Wren Ashdown"])).toBeNull();
    expect(alike("initials")(["Wren Ashdown"])?.names).toEqual(["S."]);
  });

  test("is not told of a maker whom everyone sees in unlisted sets alone", () => {
    const hidden = set("quiet", { name: "Quiet", listed: false });
    const inside = { ...tile("Q-1", [coat("soot")]), set: "quiet", maker: "m1" };
    const outside = { ...tile("A-1", [coat("soot")]), maker: "m1" };
    expect(finder(makers, { sets: [hidden], tiles: [inside] })(["Wren Ashdown"])).toBeNull();
    expect(
      finder(makers, { sets: [hidden], tiles: [inside, outside] })(["Wren Ashdown"])?.names,
    ).toEqual(["Wren Ashdown"]);
  });

  test("is not told of a record that is other than it was committed", () => {
    const by = { names: ["Wren Ashdown"], others: false };
    for (const state of ["new", "changed"] as const)
      expect(writtenBySentence({ by, state, first: null, last: null })).toBeNull();
  });
});

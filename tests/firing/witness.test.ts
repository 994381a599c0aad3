import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Bend, findWitnessCone, readWitness, type Witness } from "../../src/firing/witness.ts";
import { stretchWords } from "../../templates/words/firing/cones.ts";
import { cone } from "./reference.ts";

function wordsOf(witness: Witness): string {
  const reading = readWitness(witness);
  if (!reading.ok) throw new Error(reading.message);
  return stretchWords(reading);
}

function pack(bends: Readonly<Record<string, Bend>>): Witness {
  return {
    read: "bends",
    bends: new Map(Object.entries(bends).map(([name, bend]) => [cone(name), bend])),
  };
}

describe("a pack of witness cones", () => {
  it.each([
    [{ "5": "down", "6": "bent", "7": "standing" }, "cone 6", "6"],
    [{ "5": "down", "6": "standing" }, "cone 5½", "5½"],
    [{ "5": "down", "6": "bending", "7": "standing" }, "cone 5½", "5½"],
    [{ "5": "bent", "6": "standing" }, "cone 5", "5"],
    [{ "5": "bent", "6": "bent" }, "cone 5½", "5½"],
    [{ "07": "down", "06": "bent", "05": "standing" }, "cone 06", "06"],
    [{ "01": "down", "1": "standing" }, "between cone 01 and cone 1", undefined],
    [{ "6": "down" }, "cone 6½ or hotter", undefined],
    [{ "6": "standing" }, "cone 5½ or cooler", undefined],
    [{ "4": "down", "7": "standing" }, "cone 4½ to cone 6½", "5½"],
  ] as const)("%o is %s", (bends, words, read) => {
    expect(wordsOf(pack(bends))).toBe(words);
    expect(findWitnessCone(pack(bends))).toBe(read);
  });

  it("in which the hotter cone has bent further contradicts itself", () => {
    expect(readWitness(pack({ "5": "standing", "6": "down" }))).toEqual({
      ok: false,
      message: "Cone 6 is down while cone 5, the cooler of the two, is standing: that cannot be.",
      hint: "Look at the pack again: two cones may have changed places, or 06 been taken for 6.",
    });
    expect(findWitnessCone(pack({ "5": "standing", "6": "down" }))).toBeUndefined();
  });

  it("is sorted by heat, not by the order it was written in", () => {
    expect(wordsOf(pack({ "7": "standing", "6": "bent", "05": "down" }))).toBe("cone 6");
  });

  it("reads no cooler when any of its cones has bent further", () => {
    const bends = ["standing", "bending", "bent", "down"] as const;
    const rank = fc.integer({ min: 0, max: 3 });
    fc.assert(
      fc.property(rank, rank, rank, rank, rank, rank, (...ranks) => {
        const packOf = (all: readonly number[]) =>
          pack(Object.fromEntries(all.map((n, i) => [`${i + 5}`, bends[n] ?? "standing"])));
        const less = ranks.slice(0, 3).sort((a, b) => b - a);
        const more = less.map((n, i) => Math.max(n, ranks.slice(3).sort((a, b) => b - a)[i] ?? 0));
        const [first, second] = [readWitness(packOf(less)), readWitness(packOf(more))];
        if (!first.ok || !second.ok) throw new Error("sorted packs do not contradict themselves");
        expect(second.low).toBeGreaterThanOrEqual(first.low);
        expect(second.high).toBeGreaterThanOrEqual(first.high);
      }),
    );
  });
});

describe("a witness read as a cone", () => {
  it("is that cone, halves too", () => {
    expect(wordsOf({ read: "cone", cone: cone("6½") })).toBe("cone 6½");
    expect(findWitnessCone({ read: "cone", cone: cone("06") })).toBe("06");
  });
});

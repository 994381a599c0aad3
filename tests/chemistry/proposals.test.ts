import { fc, test as propertyTest } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { tellBrings } from "../../src/chemistry/brings.ts";
import { materialFinder } from "../../src/chemistry/materials.ts";
import { mixAnalyses } from "../../src/chemistry/mix.ts";
import { findProposals, type Proposal } from "../../src/chemistry/proposals.ts";
import { describeRework, type Share } from "../../src/chemistry/rework.ts";
import { keepAdditions } from "../../src/chemistry/rework-additions.ts";
import { asNear, distanceBetween } from "../../src/chemistry/rework-distance.ts";
import { inStudioOrder } from "../../src/chemistry/studio-order.ts";
import { findNearestSwap } from "../../src/chemistry/swap.ts";
import { molesToUnity, weightsToMoles } from "../../src/chemistry/unity.ts";
import { readReference } from "./reference.ts";

const findMaterial = materialFinder([]);

function share(material: string, parts = 0): Share {
  const found = findMaterial(material);
  if (!found.ok) throw new Error(found.reasons[0].message);
  return { material, parts, analysis: found.material.analysis };
}

const shares = (recipe: Readonly<Record<string, number>>) =>
  Object.entries(recipe).map(([material, parts]) => share(material, parts));

function unityOf(written: readonly Share[]) {
  const mixed = mixAnalyses(written.map(({ analysis, parts }) => ({ analysis, weight: parts })));
  return molesToUnity(weightsToMoles(mixed.oxides)) ?? {};
}

interface Asked {
  readonly written: readonly Share[];
  readonly without: string;
  readonly others: readonly string[];
}

function propose({ written, without, others }: Asked, isNamed = false): readonly Proposal[] {
  const wanted = unityOf(written);
  return findProposals(wanted, {
    written,
    without,
    others: others.map((id) => share(id)),
    isNamed,
  });
}

const liner = shares({ "potash-feldspar": 40, silica: 30, whiting: 20, kaolin: 10 });

/** Grams a mole, as the reference table has them. */
function molarMass(of: string): number {
  const row = readReference("minerals").find(({ formula }) => formula === of);
  return Number(row?.molar_mass_g_mol);
}

describe("a swap", () => {
  // minerals.csv, derived: the formulas' molar masses by the CIAAW 2021 atomic weights.
  const wollastonite = (20 * molarMass("CaSiO3")) / molarMass("CaCO3");

  test("of whiting for wollastonite takes as many moles of it, and leaves the rest as written", () => {
    const swap = findNearestSwap(unityOf(liner), liner, "whiting", [share("wollastonite")]);
    expect(swap?.of).toEqual(["CaO"]);
    expect(swap?.into.parts).toBeCloseTo(wollastonite, 3);
    expect(swap?.into.parts).toBeCloseTo(23.212, 3);
    const total = 80 + wollastonite;
    expect(swap?.rework.portions.map(({ material, parts }) => [material, parts])).toEqual([
      ["potash-feldspar", expect.closeTo(4000 / total, 3)],
      ["silica", expect.closeTo(3000 / total, 3)],
      ["wollastonite", expect.closeTo((100 * wollastonite) / total, 3)],
      ["kaolin", expect.closeTo(1000 / total, 3)],
    ]);
  });

  test("with the rest weighed anew takes the silica off that the wollastonite brings", () => {
    const [nearest] = propose({ written: liner, without: "whiting", others: ["wollastonite"] });
    const silica = 30 - (20 * molarMass("SiO2")) / molarMass("CaCO3");
    const total = 40 + 10 + silica + wollastonite;
    const parts = Object.fromEntries(
      nearest?.rework.portions.map(({ material, parts: p }) => [material, p]) ?? [],
    );
    expect(nearest?.kind).toBe("one");
    expect(parts.wollastonite).toBeCloseTo((100 * wollastonite) / total, 3);
    expect(parts.silica).toBeCloseTo((100 * silica) / total, 3);
  });

  test("of one feldspar for another counts the alkalis together", () => {
    const swap = findNearestSwap(unityOf(liner), liner, "potash-feldspar", [
      share("soda-feldspar"),
    ]);
    expect(swap?.of).toEqual(["Li2O", "Na2O", "K2O"]);
    expect(swap?.rework.unity.Na2O).toBeCloseTo(unityOf(liner).K2O ?? 0, 3);
  });

  test("takes nothing that hardly brings what is missing", () => {
    expect(findNearestSwap(unityOf(liner), liner, "whiting", [share("kaolin")])).toBeUndefined();
  });
});

describe("proposals", () => {
  test("go from the nearest to the simplest, and each is nearer than all that are simpler", () => {
    const found = propose({
      written: liner,
      without: "potash-feldspar",
      others: ["soda-feldspar", "nepheline-syenite", "cornish-stone", "ball-clay"],
    });
    expect(found.length).toBeGreaterThan(2);
    const distances = found.map(({ rework }) => rework.distance);
    expect(distances).toEqual(distances.toSorted((a, b) => a - b));
    const coming = found.map(({ comingIn }) => comingIn.length);
    expect(coming).toEqual(coming.toSorted((a, b) => b - a));
  });

  test("leave out what is farther-fetched where a simpler way is as near", () => {
    const found = propose({
      written: liner,
      without: "whiting",
      others: ["wollastonite", "dolomite", "bone-ash", "plaster"],
    });
    expect(found.map(({ kind }) => kind)).not.toContain("two");
    const plaster = propose({ written: liner, without: "whiting", others: ["plaster"] });
    expect(plaster.map(({ kind }) => kind)).toEqual(["swap"]);
  });

  test("of two materials that bring the same take the one that studios have", () => {
    const others = inStudioOrder(["gypsum", "plaster", "whiting"]);
    const written = shares({ "potash-feldspar": 40, silica: 30, wollastonite: 30 });
    const [nearest] = propose({ written, without: "wollastonite", others });
    expect(nearest?.comingIn).toEqual(["whiting"]);
  });

  test("hold no other glaze for one of these, unless there is nothing else", () => {
    const found = propose({ written: liner, without: "whiting", others: ["wollastonite"] });
    expect(found.map(({ kind }) => kind)).toEqual(["one", "swap"]);
    const alone = propose({ written: liner, without: "whiting", others: [] });
    expect(alone.map(({ kind }) => kind)).toEqual(["rest"]);
  });

  const known = ["potash-feldspar", "soda-feldspar", "silica", "kaolin", "whiting", "dolomite"];
  const others = [
    "wollastonite",
    "talc",
    "nepheline-syenite",
    "zinc-oxide",
    "bone-ash",
    "colemanite",
  ];
  const asked = fc.record({
    parts: fc.array(fc.integer({ min: 3, max: 50 }), { minLength: 4, maxLength: 6 }),
    missing: fc.nat(),
    others: fc.subarray(others),
    isNamed: fc.boolean(),
  });
  const askedOf = (of: { parts: readonly number[]; missing: number; others: string[] }): Asked => {
    const written = of.parts.map((parts, i) => share(known[i] ?? "silica", parts));
    const without = written[of.missing % written.length]?.material ?? "";
    return { written, without, others: of.others };
  };

  propertyTest.prop([asked], { numRuns: 60 })(
    "tell the formula that their own recipe has, and never use what is missing",
    (of) => {
      const question = askedOf(of);
      const wanted = unityOf(question.written);
      for (const { rework } of propose(question, of.isNamed)) {
        expect(rework.portions.map(({ material }) => material)).not.toContain(question.without);
        const made = rework.portions.map(({ material, parts }) => share(material, parts));
        expect(made.reduce((sum, { parts }) => sum + parts, 0)).toBeCloseTo(100, 6);
        expect(distanceBetween(unityOf(made), rework.unity)).toBeLessThan(1e-9);
        expect(distanceBetween(wanted, unityOf(made))).toBeCloseTo(rework.distance, 9);
      }
    },
  );

  propertyTest.prop([asked, fc.subarray(others)], { numRuns: 60 })(
    "never lead farther off for more materials that may come in",
    (of, more) => {
      const question = askedOf(of);
      const all = [...new Set([...question.others, ...more])];
      const few = propose(question, of.isNamed)[0]?.rework.distance ?? Number.POSITIVE_INFINITY;
      const many = propose({ ...question, others: all }, of.isNamed)[0]?.rework.distance;
      // As near is near enough for the simpler one, and the sum of the fluxes is bound and not fixed.
      expect(many ?? Number.POSITIVE_INFINITY).toBeLessThanOrEqual(few * 1.01 + 1.5 * asNear);
    },
  );

  const added = fc.dictionary(
    fc.constantFrom("red-iron-oxide", "tin-oxide", "zircon", "rutile", "bentonite"),
    fc.double({ min: 0.1, max: 20, noNaN: true }),
  );
  propertyTest.prop([added, fc.constantFrom("red-iron-oxide", "whiting", "rutile")], {
    numRuns: 60,
  })(
    "keep what is added on top to the last digit, but for what is missing",
    (additions, without) => {
      const written = shares(additions);
      const { kept, lost } = keepAdditions(written, without, [share("black-iron-oxide")]);
      const { [without]: gone, ...rest } = additions;
      expect(kept).toEqual(Object.entries(rest).map(([material, parts]) => ({ material, parts })));
      expect(lost?.parts).toBe(gone);
    },
  );
});

describe("what a material brings", () => {
  test.each([
    ["whiting", undefined, "brings calcium and nothing else"],
    ["soda-feldspar", "Na2O", "brings sodium with alumina and silica"],
    ["dolomite", "MgO", "brings magnesium with calcium"],
    ["talc", "MgO", "brings magnesium with silica"],
    ["zircon", "ZrO2", "brings zirconium with silica"],
    ["kaolin", undefined, "brings alumina with silica"],
    ["silica", undefined, "brings silica and nothing else"],
  ] as const)("is told of %s, sought for %s", (id, soughtFor, told) => {
    expect(tellBrings(share(id).analysis, soughtFor)).toBe(told);
  });
});

test("a recipe without a flux has no formula to describe", () => {
  expect(describeRework({}, shares({ kaolin: 50, silica: 50 }))).toBeUndefined();
});

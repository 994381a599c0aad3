/** What holds of cautions for any recipe: nothing that is added, and no order, makes one go silent. */
import * as fc from "fast-check";
import { expect, test } from "vitest";
import type { Caution } from "../../../src/chemistry/cautions/cautions.ts";
import { theoreticalMaterials } from "../../../src/chemistry/minerals/minerals.ts";
import { blendOf, cautionsFor, cautionsOf, messages, recipe } from "./recipes.ts";

/** Lines of which some harm, some do not, and some are not printed as a chemist would. */
const lines = fc.constantFrom(
  ...["SiO2", "Al2O3", "CaO", "K2O", "PbO", "CdO", "CuO", "CoO", "MnO", "Cr2O3", "BaO", "Li2O"],
  ...["NiO", "V2O5", "Sb2O3", "Se", "As2O3", "UO2", "F", "SO3", "CO2", "MgO", "PBO", "Co3O4"],
);
const unreadable = fc.oneof(
  fc.constantFrom("KNaO", "Al203", "R2O3", "other", "", "Fe2O3+TiO2", "rest (by difference)"),
  fc.string({ maxLength: 12 }).map((text) => `?${text.replace(/[A-Za-z.]/gu, "")}`),
);
const amount = fc.integer({ min: 1, max: 60 });
const analyses = fc.dictionary(lines, amount, { minKeys: 1, maxKeys: 6 });

/** What a caution is about and how loud it is; how exactly it is told may change. */
const kinds = (cautions: readonly Caution[]) =>
  new Set(cautions.map(({ code, about, isLoud }) => `${code} ${about} ${isLoud}`));

test("a line that cannot be read never takes a caution away", () => {
  fc.assert(
    fc.property(analyses, unreadable, amount, (analysis, key, of) => {
      const of_ = (stated: object) =>
        kinds(cautionsFor({ silica: 50, sack: 50 }, { sack: { analysis: stated } }));
      const told = of_({ ...analysis, [key]: of });
      for (const kind of of_(analysis)) expect(told).toContain(kind);
    }),
  );
});

test("a material of which nothing is known never takes a caution for the others away, but for amounts", () => {
  fc.assert(
    fc.property(analyses, (analysis) => {
      const materials = { sack: { analysis } };
      const told = kinds(cautionsFor({ sack: 50, gravel: 50 }, materials));
      const before = cautionsFor({ sack: 50 }, materials);
      for (const kind of kinds(before.filter(({ code }) => code !== "heavy-load")))
        expect(told).toContain(kind);
    }),
  );
});

const ids = theoreticalMaterials.map(({ id }) => id);
const recipes = fc.dictionary(fc.constantFrom(...ids), amount, { minKeys: 1, maxKeys: 5 });

test("the order in which a recipe is written changes no word", () => {
  fc.assert(
    fc.property(recipes, (parts) => {
      const turned = Object.fromEntries(Object.entries(parts).reverse());
      expect(messages(cautionsFor(turned))).toEqual(messages(cautionsFor(parts)));
    }),
  );
});

const parts = fc.tuple(recipes, recipes, fc.boolean());

test("a blend of which amounts are not known has every caution of its parts", () => {
  fc.assert(
    fc.property(parts, ([a, b, isForFood]) => {
      const jar = { bought: { maker: "Oxbow" }, ...(isForFood ? {} : { label: "not-for-food" }) };
      const of = cautionsOf({
        a: recipe(a),
        b: recipe(b),
        jar,
        mix: blendOf({ a: 1, b: 2, jar: 3 }, "weight"),
        turned: blendOf({ jar: 3, b: 2, a: 1 }, "weight"),
        spoons: blendOf({ a: 1, b: 1, jar: 1 }, "volume"),
      });
      for (const id of ["mix", "spoons"]) {
        const told = kinds(of(id));
        for (const part of ["a", "b", "jar"])
          for (const kind of kinds(of(part))) expect(told).toContain(kind);
      }
      expect(messages(of("turned"))).toEqual(messages(of("mix")));
    }),
    { numRuns: 60 },
  );
});

test("a blend by weight of known recipes has every caution of its parts but for diluted metals", () => {
  fc.assert(
    fc.property(recipes, recipes, amount, (a, b, share) => {
      const of = cautionsOf({
        a: recipe(a),
        b: recipe(b),
        mix: blendOf({ a: share, b: 60 }, "weight"),
        turned: blendOf({ b: 60, a: share }, "weight"),
      });
      const told = kinds(of("mix"));
      for (const part of ["a", "b"])
        for (const kind of kinds(of(part).filter(({ code }) => code !== "heavy-load")))
          expect(told).toContain(kind);
      expect(messages(of("turned"))).toEqual(messages(of("mix")));
    }),
    { numRuns: 60 },
  );
});

test("more of a metal is never quieter", () => {
  fc.assert(
    fc.property(recipes, fc.constantFrom("copper-oxide", "cobalt-oxide"), amount, (a, id, n) => {
      const isLoud = (more: number) =>
        cautionsFor({ ...a, [id]: n + more }).some(({ code }) => code === "heavy-load");
      if (isLoud(0)) expect(isLoud(10)).toBe(true);
    }),
  );
});

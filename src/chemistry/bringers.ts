/** Which materials would bring what a reworked recipe still lacks. */
import { fluxes, type Oxide, type OxideAmounts } from "../terms/oxides.ts";
import { analyseFormula } from "./analysis.ts";
import { ingredientFinder } from "./cautions/ingredients.ts";
import { isShunned } from "./cautions/shunned.ts";
import { theoreticalMaterials } from "./minerals/minerals.ts";
import { type Candidate, findNearestRecipe, type Rework } from "./rework.ts";

/** A material that would bring the recipe nearer. */
export interface BroughtBy {
  readonly oxide: Oxide;
  readonly material: string;
  /** How far from the wanted formula the best recipe with it would be. */
  readonly distance: number;
}

/** How many materials are named for one oxide. */
const mostNamed = 3;

/**
 * For every oxide that a rework falls short of, the materials that would bring it, the one that
 * leads nearest first. Oxides of which there is too much have none.
 *
 * @param rework null where nothing could be made for want of a flux
 * @param candidates those the rework was made from
 * @param others materials that could be bought: `suggestibleMaterials`, or a supplier's list
 */
export function findBringers(
  wanted: OxideAmounts,
  rework: Rework | null,
  candidates: readonly Candidate[],
  others: readonly Candidate[],
): readonly BroughtBy[] {
  const nearest = rework?.distance ?? Number.POSITIVE_INFINITY;
  const kept = new Set(rework?.portions.map(({ material }) => material));
  const used = candidates.filter(({ material, isNew }) => !isNew || kept.has(material));
  return findLacking(wanted, rework).flatMap((oxide) => {
    const bringing = others.filter(({ analysis }) => (analysis.oxides[oxide] ?? 0) > 0);
    return bringing
      .map(({ material, analysis }) => {
        const better = findNearestRecipe(wanted, [...used, { material, analysis }]);
        return { oxide, material, distance: better?.distance ?? Number.POSITIVE_INFINITY };
      })
      .filter(({ distance }) => distance < nearest)
      .sort((a, b) => a.distance - b.distance)
      .slice(0, mostNamed);
  });
}

function findLacking(wanted: OxideAmounts, rework: Rework | null): readonly Oxide[] {
  if (!rework) return fluxes.filter((flux) => (wanted[flux] ?? 0) > 0);
  return rework.unreached.filter((it) => it.reached < it.wanted).map(({ oxide }) => oxide);
}

/** Roles whose materials dissolve in the slop, harm, or are no raw materials of glazes. */
const unsuitableRoles: ReadonlySet<string> = new Set(["lead", "lustre", "soluble flux"]);

/**
 * What few studios have, where another material brings the same: minerals that are carried for
 * reckoning, and what stands in old recipes alone. Common practice, no source.
 */
const rarelyKept: ReadonlySet<string> = new Set([
  ...["amblygonite", "barium-feldspar", "barium-sulphate", "boehmite", "dicalcium-phosphate"],
  ...["diopside", "eucryptite", "forsterite", "gypsum", "halloysite", "hydrated-lime"],
  ...["hydroboracite", "kyanite", "leucite", "light-magnesium-carbonate-old", "lime-feldspar"],
  ...["mica", "mullite", "nepheline", "plaster", "polylithionite", "probertite"],
  ...["simple-copper-carbonate", "soda-nepheline", "tetracalcium-phosphate", "trilithionite"],
  ...["zinc-carbonate"],
]);

/** Materials of other roles that dissolve in the slop. Common chemistry, no source. */
const soluble: ReadonlySet<string> = new Set([
  "ammonium-metavanadate",
  "anhydrous-borax",
  "borax",
  "boric-acid",
  "boric-oxide",
  "iron-sulphate",
  "silver-nitrate",
]);

/**
 * The theoretical materials that may be suggested to a potter: none that dissolves, none with
 * lead or cadmium, none with hexavalent chromium.
 */
export function suggestibleMaterials(): readonly Candidate[] {
  const findIngredient = ingredientFinder({ materials: new Map() });
  const usable = theoreticalMaterials.filter(
    ({ id, role }) => !unsuitableRoles.has(role) && !soluble.has(id) && !rarelyKept.has(id),
  );
  return usable.flatMap(({ id, formula }) => {
    const reading = analyseFormula(formula);
    if (!reading.ok || isShunned(findIngredient(id))) return [];
    return [{ material: id, analysis: reading.analysis }];
  });
}

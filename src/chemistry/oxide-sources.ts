/** Which materials would bring the oxides that a reworked recipe still lacks. */
import { fluxes, type Oxide, type OxideAmounts } from "../terms/oxides.ts";
import { tellBrings } from "./brings.ts";
import { ingredientFinder } from "./cautions/ingredients.ts";
import { isLeftOut } from "./cautions/left-out.ts";
import { materialFinder } from "./materials.ts";
import { carriedMaterials } from "./minerals/minerals.ts";
import { type Candidate, type Rework, solve } from "./rework.ts";
import { isRarelyKept, rankAsSource } from "./studio-order.ts";

/** A material that would bring the recipe nearer. */
export interface OxideSource {
  readonly oxide: Oxide;
  readonly material: string;
  /** `brings calcium and nothing else` and the like. */
  readonly why: string;
  /** How far from the wanted formula the best recipe with it would be. */
  readonly distance: number;
}

/** How many materials are named for one oxide. */
export const mostNamed = 3;

/** A source that brings less than this share of what the best one brings is not worth buying. */
const worthBuying = 0.5;

/**
 * For every oxide that a rework falls short of, the materials that would bring it: those that
 * studios have first, then the one that leads nearest. Oxides of which there is too much have none.
 *
 * @param rework null where nothing could be made for want of a flux
 * @param used the materials that the recipe may be made of
 * @param others materials that could be bought: `suggestibleMaterials`, or a supplier's list
 */
export function findOxideSources(
  wanted: OxideAmounts,
  rework: Rework | null,
  used: readonly Candidate[],
  others: readonly Candidate[],
): readonly OxideSource[] {
  const nearest = rework?.distance ?? Number.POSITIVE_INFINITY;
  return findLacking(wanted, rework).flatMap((oxide) => {
    const sources = others
      .filter(({ analysis }) => (analysis.oxides[oxide] ?? 0) > 0)
      .map(({ material, analysis }) => ({
        oxide,
        material,
        why: tellBrings(analysis, oxide),
        distance: solve(wanted, [...used, { material, analysis }])?.distance,
      }))
      .filter((source): source is OxideSource => (source.distance ?? nearest) < nearest);
    return chooseSources(sources, nearest);
  });
}

function chooseSources(sources: readonly OxideSource[], nearest: number): readonly OxideSource[] {
  const best = Math.min(...sources.map(({ distance }) => distance));
  const farthest = Number.isFinite(nearest)
    ? nearest - worthBuying * (nearest - best)
    : Number.POSITIVE_INFINITY;
  return sources
    .filter(({ distance }) => distance <= farthest)
    .sort(
      (a, b) =>
        rankAsSource(a.oxide, a.material) - rankAsSource(b.oxide, b.material) ||
        a.distance - b.distance,
    )
    .slice(0, mostNamed);
}

function findLacking(wanted: OxideAmounts, rework: Rework | null): readonly Oxide[] {
  if (!rework) return fluxes.filter((flux) => (wanted[flux] ?? 0) > 0);
  return rework.unreached.filter((it) => it.reached < it.wanted).map(({ oxide }) => oxide);
}

/** Roles whose materials dissolve in the slop, harm, or are no raw materials of glazes. */
const unsuitableRoles: ReadonlySet<string> = new Set(["lead", "lustre", "soluble flux"]);

/** Typical ones that suppliers everywhere have, besides frits. Common practice, no source. */
const usualTypical: ReadonlySet<string> = new Set(["nepheline-syenite"]);

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
 * The materials that may be suggested to a potter: theoretical ones, and frits by their types.
 * None that dissolves, none with lead or cadmium, none with hexavalent chromium.
 */
export function suggestibleMaterials(): readonly Candidate[] {
  const findIngredient = ingredientFinder({ materials: new Map() });
  const findMaterial = materialFinder([]);
  const usable = carriedMaterials.filter(
    ({ id, role, basis }) =>
      (basis === "theoretical" || role === "frit" || usualTypical.has(id)) &&
      !unsuitableRoles.has(role) &&
      !soluble.has(id) &&
      !isRarelyKept(id),
  );
  return usable.flatMap(({ id }) => {
    const found = findMaterial(id);
    if (!found.ok || isLeftOut(findIngredient(id))) return [];
    return [{ material: id, analysis: found.material.analysis }];
  });
}

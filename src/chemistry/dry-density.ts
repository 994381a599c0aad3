/** What a dry glaze weighs for the room that its grains take in water, from its recipe. */
import { idKey } from "../terms/ids.ts";
import type { Oxide } from "../terms/oxides.ts";
import type { Analysis } from "./analysis.ts";
import type { FindMaterial, FindMaterialId } from "./materials.ts";
import { mineralDensities } from "./minerals/densities.ts";
import { carriedMaterials } from "./minerals/minerals.ts";
import { type Recipe, recipeToBatch } from "./recipe.ts";

/** In g/cm³, grain by grain, without the air between. */
export interface Density {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

export interface DryDensity extends Density {
  /** The materials, as the recipe names them, of which no table gives a density. */
  readonly unknown: readonly string[];
}

export interface MaterialDensity extends Density {
  readonly isKnown: boolean;
}

/** Gives the density of a material as a recipe names it. */
export type FindDensity = (material: string) => MaterialDensity;

/**
 * Clays, feldspars, ashes, frits and carbonates without heavy oxides lie within this: the tables
 * of `densities.ts` have none of them outside but light borates. Common practice, no source.
 */
const lightPowder: MaterialDensity = { low: 2.2, likely: 2.6, high: 3.3, isKnown: false };

/** Anything at all, tin oxide included. */
const anyPowder: MaterialDensity = { low: 1.7, likely: 2.6, high: 7, isKnown: false };

/** Oxides whose minerals are heavier than 3.3. */
const heavy = [
  ...["Fe2O3", "FeO", "TiO2", "ZrO2", "SnO2", "SrO", "BaO", "ZnO", "PbO", "MnO", "CoO"],
  ...["NiO", "CuO", "Cr2O3", "V2O5", "MoO3", "CdO", "Sb2O3", "Ag2O", "Bi2O3", "CeO2"],
  ...["Pr2O3", "Nd2O3", "Er2O3"],
] as readonly Oxide[];

/** Light borates lie below, ores of iron and the like above. */
const mostHeavy = 10;
const mostBoron = 20;

/**
 * A material that bears the id of a carried one, or has its formula, has the density of its
 * mineral; of others only the analysis tells whether they can be heavy or light.
 */
export function densityFinder(findMaterial: FindMaterial, findId: FindMaterialId): FindDensity {
  return (word) => {
    const found = findMaterial(word);
    const formula = found.ok ? found.material.formula : null;
    const sameFormula = carriedMaterials.find(
      (other) => formula !== null && other.formula === formula,
    );
    const table =
      mineralDensities.get(idKey(findId(word) ?? word)) ??
      (sameFormula && mineralDensities.get(idKey(sameFormula.id)));
    if (table) return { low: table.low, likely: middleOf(table), high: table.high, isKnown: true };
    return found.ok && isLight(found.material.analysis) ? lightPowder : anyPowder;
  };
}

function middleOf({ low, high }: Pick<Density, "high" | "low">): number {
  return (low + high) / 2;
}

function isLight({ oxides }: Analysis): boolean {
  const heavyShare = heavy.reduce((sum, oxide) => sum + (oxides[oxide] ?? 0), 0);
  return heavyShare <= mostHeavy && (oxides.B2O3 ?? 0) <= mostBoron;
}

/**
 * The dry density of a recipe: all its weight over the room that its materials take together,
 * since grains of different powders share the water without mixing (volumes add).
 *
 * @returns null for an empty recipe
 */
export function densityOfRecipe(recipe: Recipe, findDensity: FindDensity): DryDensity | null {
  const parts = recipeToBatch(recipe).filter(({ weight }) => weight > 0);
  if (parts.length === 0) return null;
  const found = parts.map((part) => ({ ...part, density: findDensity(part.material) }));
  const total = parts.reduce((sum, { weight }) => sum + weight, 0);
  const by = (which: keyof Density) =>
    total / found.reduce((room, { weight, density }) => room + weight / density[which], 0);
  const unknown = found.filter(({ density }) => !density.isKnown).map(({ material }) => material);
  return { low: by("low"), likely: by("likely"), high: by("high"), unknown: [...new Set(unknown)] };
}

/** What a potter compares a reworked glaze by, beside its formula. */
import { fluxes } from "../terms/oxides.ts";
import { type Expansion, expansionSets } from "./expansion/expansion.ts";
import { findFiredChemistry } from "./fired-chemistry.ts";
import { mixAnalyses } from "./mix.ts";
import { sumOf } from "./oxide-sums.ts";
import { type Portion, type Recipe, recipeToBatch } from "./recipe.ts";
import type { Share } from "./rework.ts";
import { weightsToMoles } from "./unity.ts";
import { type Cost, costOf, weighOutDry } from "./weighing.ts";

export interface ReworkFigures {
  /** Moles of silica for one of alumina, additions included; null without alumina. */
  readonly silicaToAlumina: number | null;
  /**
   * By each set that has a figure, the one that comes nearest to measured glasses first. Two glazes
   * are compared by one set alone.
   */
  readonly expansions: readonly KnownExpansion[];
  /** Of a kilogram of the dry glaze. */
  readonly cost: Cost;
  /** Materials whose figures are a typical analysis, by their ids. */
  readonly typical: readonly string[];
}

export interface KnownExpansion extends Expansion {
  readonly perKelvin: number;
  readonly doubt: number;
  /** As its authors are cited. */
  readonly by: string;
}

/** What is known of a material besides its analysis. */
export interface KnownMaterial {
  readonly isTypical: boolean;
  /** Of a kilogram, in the studio's currency. */
  readonly price: number | undefined;
}

/**
 * The figures of a whole glaze, additions included.
 *
 * @param shareOf gives a portion its analysis
 */
export function findFigures(
  recipe: Recipe,
  shareOf: (portion: Portion) => Share,
  known: (material: string) => KnownMaterial,
): ReworkFigures {
  const batch = recipeToBatch(recipe).map(({ material, weight }) =>
    shareOf({ material, parts: weight }),
  );
  const raw = mixAnalyses(batch.map(({ analysis, parts }) => ({ analysis, weight: parts })));
  const fired = findFiredChemistry(raw);
  const materials = [...new Set(batch.map(({ material }) => material))];
  return {
    silicaToAlumina: fired?.silicaToAlumina ?? null,
    expansions: fired?.expansion.flatMap(toKnown) ?? [],
    cost: costOf(weighOutDry(recipe, 1000), (material) => known(material).price),
    typical: materials.filter((material) => known(material).isTypical),
  };
}

function toKnown(expansion: Expansion): readonly KnownExpansion[] {
  const { model, perKelvin, doubt } = expansion;
  if (perKelvin === null || doubt === null) return [];
  const by = expansionSets.find((set) => set.model === model)?.name ?? model;
  return [{ ...expansion, perKelvin, doubt, by }];
}

/**
 * How much more of the additions there is to one of flux than there was: 1 where it is as much.
 * They stay as they were written by weight, and a base that loses less in the fire thins them.
 */
export function findStrength(before: readonly Share[], after: readonly Share[]): number {
  return fluxInAHundred(before) / fluxInAHundred(after);
}

function fluxInAHundred(shares: readonly Share[]): number {
  const mixed = mixAnalyses(shares.map(({ analysis, parts }) => ({ analysis, weight: parts })));
  return sumOf(weightsToMoles(mixed.oxides), fluxes);
}

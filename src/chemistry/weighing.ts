/** Weighing out a batch by its dry weight, and what dry weight a slop holds. */
import type { Recipe } from "./recipe.ts";
import { recipeToBatch } from "./recipe.ts";

export interface WeighedItem {
  readonly material: string;
  readonly grams: number;
  readonly isAddition: boolean;
}

export interface WeighingSheet {
  /** In the order of the recipe, additions last. */
  readonly items: readonly WeighedItem[];
  /** Dry, additions included. */
  readonly totalGrams: number;
}

/**
 * A batch by all of its dry weight, additions included, as blends are counted.
 *
 * @param grams of ingredients and additions together
 */
export function weighOutDry(recipe: Recipe, grams: number): WeighingSheet {
  const batch = recipeToBatch(recipe);
  const gramsPerPart = grams / batch.reduce((sum, { weight }) => sum + weight, 0);
  const items = batch.map(({ material, weight, isAddition }) => ({
    material,
    grams: weight * gramsPerPart,
    isAddition,
  }));
  return { items, totalGrams: items.reduce((sum, item) => sum + item.grams, 0) };
}

/** A slop to be mixed. */
export interface Slop {
  readonly litres: number;
  /** Weight of a volume of slop over that of the same volume of water: 1.45 and the like. */
  readonly specificGravity: number;
  /** Grams of dry glaze in a cubic centimetre of it. */
  readonly dryDensity: number;
}

/**
 * Brongniart's relation: a litre of slop weighs more than a litre of water by what its solids
 * weigh more than the water whose place they take, so W = (P - 1000) d / (d - 1) grams of dry
 * matter for P grams a litre and a dry density d.
 *
 * Source: A. Brongniart, Traité des arts céramiques (1844), from memory; the relation as printed
 * in Forming Techniques for the Self-Reliant Potter (GTZ 1991), appendix, compared.
 */
export function dryGrams({ litres, specificGravity, dryDensity }: Slop): number {
  return (1000 * litres * (specificGravity - 1) * dryDensity) / (dryDensity - 1);
}

/**
 * The water that brings dry glaze to a specific gravity, in grams or millilitres for each gram of
 * it: what is left of Brongniart's litre when its dry glaze is taken out.
 */
export function waterPerGram(specificGravity: number, dryDensity: number): number {
  const slop = { litres: 1, specificGravity, dryDensity };
  return (1000 * specificGravity) / dryGrams(slop) - 1;
}

/**
 * What sieve, bucket, brush and drips keep of a slop, in per cent: common practice, no source.
 * Whoever knows better what is lost in their studio writes that.
 */
export const usualLossPerCent = 5;

export interface Cost {
  /** In the studio's currency, of the materials whose price is known. */
  readonly known: number;
  /** Materials without a price. */
  readonly unpriced: readonly string[];
}

/**
 * What a batch costs.
 *
 * @param pricePerKilogram of a material, where known
 */
export function costOf(
  weighing: WeighingSheet,
  pricePerKilogram: (material: string) => number | undefined,
): Cost {
  const priced = weighing.items.map((item) => ({
    ...item,
    price: pricePerKilogram(item.material),
  }));
  return {
    known: priced.reduce((sum, { grams, price = 0 }) => sum + (grams / 1000) * price, 0),
    unpriced: [
      ...new Set(priced.filter(({ price }) => price === undefined).map((item) => item.material)),
    ],
  };
}

/** A recipe, and what is weighed out for it. */

/** So many parts of a material, named by its id. */
export interface Portion {
  readonly material: string;
  readonly parts: number;
}

export interface Recipe {
  /** Parts by weight; they need not add to 100. */
  readonly ingredients: readonly Portion[];
  /** Parts for every 100 of the ingredients together. */
  readonly additions: readonly Portion[];
}

/** A share of a batch. */
export interface BatchItem {
  readonly material: string;
  /** In the unit of the recipe's ingredients. */
  readonly weight: number;
  readonly isAddition: boolean;
}

/**
 * What to weigh out for a recipe as it is written: ingredients by their parts, additions by their
 * parts for every 100 of the ingredients.
 */
export function recipeToBatch(recipe: Recipe): readonly BatchItem[] {
  const base = recipe.ingredients.reduce((sum, portion) => sum + portion.parts, 0);
  return [
    ...recipe.ingredients.map(({ material, parts }) => ({
      material,
      weight: parts,
      isAddition: false,
    })),
    ...recipe.additions.map(({ material, parts }) => ({
      material,
      weight: (parts / 100) * base,
      isAddition: true,
    })),
  ];
}

/** What is to be minded with a recipe that was reworked. */
import { idKey } from "../terms/ids.ts";
import { inOrder } from "./cautions/caution.ts";
import { type Caution, cautionsOfMixture } from "./cautions/cautions.ts";
import { type FindIngredient, ingredientFinder } from "./cautions/ingredients.ts";
import type { OxideSource } from "./oxide-sources.ts";
import { type Recipe, recipeToBatch } from "./recipe.ts";

/** Of the recipe as it is fired, and in the bag of what comes in. */
export function cautionsOfRework(
  recipe: Recipe,
  comingIn: readonly string[],
  findIngredient: FindIngredient,
): readonly Caution[] {
  const isNew = new Set(comingIn.map(idKey));
  const batch = recipeToBatch(recipe).map(({ material, weight }) => ({
    ingredient: findIngredient(material),
    weight,
  }));
  const ingredients = batch.map(({ ingredient }) => ingredient);
  const handled = ingredients.filter(({ id }) => isNew.has(idKey(id)));
  const fired = cautionsOfMixture({ ingredients, batch });
  return inOrder([
    ...fired.filter(({ isLoud }) => isLoud),
    ...cautionsOfMixture({ ingredients: handled, batch: null }),
    ...fired.filter(({ code }) => code === "only-tests-tell"),
  ]);
}

/** Of what could be bought: what is in the bag, for nobody has mixed it yet. */
export function cautionsOfSources(sources: readonly OxideSource[]): readonly Caution[] {
  const findIngredient = ingredientFinder({ materials: new Map() });
  const ids = [...new Set(sources.map(({ material }) => material))];
  const handled = cautionsOfMixture({ ingredients: ids.map(findIngredient), batch: null });
  return inOrder(handled.filter(({ code }) => code !== "kiln-fumes"));
}

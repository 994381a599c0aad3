/** What a glaze is weighed out of from the bags, blends of other glazes included. */
import { idKey } from "../terms/ids.ts";
import type { BlendPart, MixedGlaze } from "./mixed-glazes.ts";
import { type Recipe, recipeToBatch } from "./recipe.ts";

/** Gives the recipe of the glaze of an id, down to raw materials. */
export type FindRawRecipe = (id: string) => Recipe | undefined;

/**
 * A recipe stays as it is written. A blend by dry weight becomes one recipe of all materials of
 * its parts, in a hundred, most first, each material once; a blend by volume and a glaze that was
 * bought have none.
 *
 * @param idOf the material that a word of a recipe means, as flint means silica
 */
export function rawRecipeFinder(
  glazes: readonly MixedGlaze[],
  idOf: (word: string) => string = (word) => word,
): FindRawRecipe {
  const byId = new Map(glazes.map((glaze) => [idKey(glaze.id), glaze]));
  const known = new Map<string, Recipe | undefined>();

  // What leads into a circle has no recipe wherever one begins, so each is worked out once.
  function find(id: string, within: readonly string[]): Recipe | undefined {
    const key = idKey(id);
    if (within.includes(key)) return undefined;
    if (!known.has(key)) known.set(key, work(key, within));
    return known.get(key);
  }

  function work(key: string, within: readonly string[]): Recipe | undefined {
    const making = byId.get(key)?.making;
    if (!making) return undefined;
    if (making.kind === "recipe") return making.recipe;
    if (making.kind === "bought" || making.by === "volume") return undefined;
    return mixRecipes(making.parts, (part) => find(part, [...within, key]), idOf);
  }

  return (id) => find(id, []);
}

function mixRecipes(
  parts: readonly BlendPart[],
  findRecipe: FindRawRecipe,
  idOf: (word: string) => string,
): Recipe | undefined {
  const total = parts.reduce((sum, part) => sum + part.parts, 0);
  const shares = new Map<string, number>();
  for (const { glaze, parts: weight } of parts) {
    const recipe = findRecipe(glaze);
    if (!recipe) return undefined;
    const batch = recipeToBatch(recipe);
    const dry = batch.reduce((sum, item) => sum + item.weight, 0);
    for (const { material: word, weight: grams } of batch) {
      const material = idOf(word);
      const share = (100 * (weight / total) * grams) / dry;
      shares.set(material, (shares.get(material) ?? 0) + share);
    }
  }
  const ingredients = [...shares].map(([material, share]) => ({ material, parts: share }));
  return { ingredients: ingredients.sort((a, b) => b.parts - a.parts), additions: [] };
}

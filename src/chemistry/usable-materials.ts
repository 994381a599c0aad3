/** What a glaze may be reworked with: what is held, what was named, what the studio has. */
import type { Archive } from "../records/archive.ts";
import { compareIds, idKey } from "../terms/ids.ts";
import { ingredientFinder } from "./cautions/ingredients.ts";
import { isLeftOut } from "./cautions/left-out.ts";
import { findMaterialIdOf, findMaterialOf, findRecipe } from "./from-records.ts";
import type { AnalysedMaterial } from "./materials.ts";
import type { Recipe } from "./recipe.ts";
import { inStudioOrder } from "./studio-order.ts";

type Recipes = Pick<Archive, "glazes" | "materials">;

/**
 * The materials that may come into a recipe, those first that studios have, without its own. What
 * was named may always come in. Of what the studio has, whatever holds a poison, and whatever would
 * bring a harmful metal that the glaze never held, stays out.
 *
 * @param recipe by ids
 * @param named ids of the only materials that may come in; undefined for what the studio has
 */
export function findMaterialsToBringIn(
  archive: Recipes,
  recipe: Recipe,
  named: readonly string[] | undefined,
): readonly AnalysedMaterial[] {
  const findId = findMaterialIdOf(archive);
  const findIngredient = ingredientFinder(archive);
  const findMaterial = findMaterialOf(archive);
  const find = (id: string) => {
    const found = findMaterial(id);
    return found.ok ? [found.material] : [];
  };
  const held = materialsIn(recipe).flatMap(find);
  const heldIds = new Set(held.map(({ id }) => idKey(id)));
  const ids = (named ?? listStock(archive)).map((word) => idKey(findId(word) ?? word));
  return inStudioOrder([...new Set(ids)])
    .filter((id) => !heldIds.has(id))
    .flatMap(find)
    .filter(
      (material) =>
        named !== undefined ||
        !(isLeftOut(findIngredient(material.id)) || bringsMetal(material, held)),
    );
}

/** What recipes of the archive use, then what has a record. */
function listStock(archive: Recipes): readonly string[] {
  const recipes = [...archive.glazes.values()].flatMap(({ record }) => findRecipe(record) ?? []);
  return [
    ...recipes.flatMap(materialsIn).sort(compareIds),
    ...[...archive.materials.values()].map(({ id }) => id).sort(compareIds),
  ];
}

export function materialsIn({ ingredients, additions }: Recipe): readonly string[] {
  return [...ingredients, ...additions].map(({ material }) => material);
}

/** Metals that harm as powder, or in food: common practice, no source. */
const metalsToAskFor = [
  ...(["BaO", "Li2O", "MnO", "CoO", "NiO", "CuO", "Cr2O3", "V2O5", "Sb2O3"] as const),
];

/** Per cent of the raw material below which a metal in it is a trace. */
const trace = 1;

type Analysed = Pick<AnalysedMaterial, "analysis">;

/** Whether a material would bring a metal to ask for that the glaze never held. */
export function bringsMetal({ analysis }: Analysed, held: readonly Analysed[]): boolean {
  return metalsToAskFor.some(
    (oxide) =>
      (analysis.oxides[oxide] ?? 0) >= trace &&
      held.every((material) => (material.analysis.oxides[oxide] ?? 0) < trace),
  );
}

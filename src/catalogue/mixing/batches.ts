/** What mixed glazes are weighed out of. */
import { mixedGlazesOf } from "../../chemistry/from-records.ts";
import { rawRecipeFinder } from "../../chemistry/raw-batch.ts";
import { recipeToBatch } from "../../chemistry/recipe.ts";
import { type Archive, findById } from "../../records/archive.ts";
import type { FindMaterialLink } from "./materials.ts";
import type { WeighedPart } from "./mixing-types.ts";

/** Gives what the glaze of an id is weighed out of; null where that is not known. */
export type FindBatch = (glaze: string) => readonly WeighedPart[] | null;

export function batchFinder(archive: Archive, findLink: FindMaterialLink): FindBatch {
  const findRecipe = rawRecipeFinder(mixedGlazesOf(archive));
  return (glaze) => {
    const recipe = findRecipe(glaze);
    if (!recipe) return null;
    return recipeToBatch(recipe).map(({ material: id, weight, isAddition }) => {
      const link = findLink(id);
      return {
        id: link?.id ?? id,
        name: link?.name ?? id,
        url: link?.url ?? null,
        parts: weight,
        isAddition,
        price: findById(archive.materials, link?.id ?? id)?.record.price ?? null,
      };
    });
  };
}

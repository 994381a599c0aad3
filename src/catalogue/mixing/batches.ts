/** What mixed glazes are weighed out of. */
import { type DryDensity, densityFinder, densityOfRecipe } from "../../chemistry/dry-density.ts";
import { findMaterialIdOf, findMaterialOf, mixedGlazesOf } from "../../chemistry/from-records.ts";
import { rawRecipeFinder } from "../../chemistry/raw-batch.ts";
import { recipeToBatch } from "../../chemistry/recipe.ts";
import { type Archive, findById } from "../../records/archive.ts";
import { idKey } from "../../terms/ids.ts";
import { remember } from "../../terms/remember.ts";
import type { FindMaterialLink } from "./material-links.ts";

/** A line of a weighing sheet. */
export interface WeighedPart {
  readonly id: string;
  readonly name: string;
  /** The material's page; null where nothing is known of it. */
  readonly url: string | null;
  /** Parts by weight; additions are spelt out in the same parts. */
  readonly parts: number;
  readonly isAddition: boolean;
  /** What a kilogram costs, in the studio's currency; null where it is not known. */
  readonly price: number | null;
}

/** What a glaze is weighed out of; nothing where that is not known. */
interface Weighed {
  readonly batch: readonly WeighedPart[] | null;
  readonly dryDensity: DryDensity | null;
}

/** Gives what the glaze of an id is weighed out of. */
export type FindBatch = (glaze: string) => Weighed;

export function batchFinder(archive: Archive, findLink: FindMaterialLink): FindBatch {
  const findId = findMaterialIdOf(archive);
  const findRecipe = rawRecipeFinder(mixedGlazesOf(archive), (word) => findId(word) ?? word);
  const findDensity = densityFinder(findMaterialOf(archive), findId);
  const nameOf = (id: string) => findLink(id)?.name ?? id;
  const weighOut = (glaze: string): Weighed => {
    const recipe = findRecipe(glaze);
    if (!recipe) return { batch: null, dryDensity: null };
    const density = densityOfRecipe(recipe, findDensity);
    const dryDensity = density && { ...density, unknown: density.unknown.map(nameOf) };
    const batch = recipeToBatch(recipe).map(({ material: id, weight, isAddition }) => {
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
    return { batch, dryDensity };
  };
  return remember(mostGlazes, weighOut, idKey);
}

/** More than any archive has. */
const mostGlazes = 10_000;

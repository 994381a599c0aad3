/** From the records of an archive to what chemistry works on. */
import type { Archive, Filed } from "../records/archive.ts";
import type { GlazeRecord } from "../records/glaze.ts";
import {
  type FindMaterial,
  type FindMaterialId,
  materialFinder,
  materialIdFinder,
} from "./materials.ts";
import type { Making, MixedGlaze } from "./mixed-glazes.ts";
import type { Recipe } from "./recipe.ts";

/** The materials of an archive, then those that Tilebook carries. */
export function findMaterialOf(archive: Pick<Archive, "materials">): FindMaterial {
  const sources = [...archive.materials.values()].map(({ id, record }) => ({ id, ...record }));
  return materialFinder(sources);
}

/** Follows the words of an archive's recipes to materials. */
export function findMaterialIdOf({ materials }: Pick<Archive, "materials">): FindMaterialId {
  return materialIdFinder([...materials.values()].map(({ id }) => id));
}

/** The glazes of an archive, and how each comes about. */
export function mixedGlazesOf(archive: Pick<Archive, "glazes">): readonly MixedGlaze[] {
  return [...archive.glazes.values()].map(({ id, record }: Filed<GlazeRecord>) => ({
    id,
    name: record.name,
    making: toMaking(record),
  }));
}

function toMaking(record: GlazeRecord): Making {
  const recipe = findRecipe(record);
  if (recipe) return { kind: "recipe", recipe };
  if (record.blend) return { kind: "blend", by: record.by ?? "weight", parts: record.blend };
  return { kind: "bought" };
}

/** What a glaze is weighed out of; undefined for a blend and for a glaze that was bought. */
export function findRecipe({ ingredients, additions }: GlazeRecord): Recipe | undefined {
  return ingredients && { ingredients, additions: additions ?? [] };
}

/** What the recipes of glazes name: materials and other glazes. */
import type { Filed } from "../../records/archive.ts";
import type { GlazeRecord } from "../../records/glaze.ts";
import type { Problem } from "../../records/problem.ts";
import { idKey } from "../../terms/ids.ts";
import { follow, type Known } from "./look-up.ts";
import { type GlazeNames, soughtGlaze, soughtMaterial } from "./sought.ts";

/** Glazes by id and by the name people call them. Of two with one name the first counts. */
export function nameGlazes(ids: Known, glazes: Iterable<Filed<GlazeRecord>>): GlazeNames {
  const called = new Map<string, string>();
  for (const { id, record } of glazes)
    if (!called.has(record.name) && idKey(record.name) !== idKey(id)) called.set(record.name, id);
  return { ids, called };
}

/** Finds what a glaze's recipe names and nobody knows. The record stays as it was written. */
export function findUnknownInRecipe(
  glaze: Filed<GlazeRecord>,
  glazes: GlazeNames,
  materials: Known,
): readonly Problem[] {
  const { file, record } = glaze;
  const weighed = (["ingredients", "additions"] as const).flatMap((field) =>
    (record[field] ?? []).flatMap(({ material }, i) => {
      const mention = { file, path: [field, i, "material"], written: material };
      return follow(mention, materials, soughtMaterial).problems;
    }),
  );
  const blended = (record.blend ?? []).flatMap((part, i) => {
    const mention = { file, path: ["blend", i, "glaze"], written: part.glaze };
    return follow(mention, glazes.ids, soughtGlaze(glazes)).problems;
  });
  return [...weighed, ...blended];
}

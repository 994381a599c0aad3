/** What the recipes of glazes name: materials and other glazes. */
import type { Filed } from "../../records/archive.ts";
import type { GlazeRecord } from "../../records/glaze.ts";
import type { Problem } from "../../records/problem.ts";
import { idKey } from "../../terms/ids.ts";
import { problemOfFile } from "../problem-of-file.ts";
import { follow, type Known, lookUp, type Mention } from "./look-up.ts";
import { type GlazeNames, glazeLookup } from "./lookups.ts";
import { findNearMaterials } from "./near-materials.ts";

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
      if (lookUp(materials, material) !== undefined) return [];
      return [
        unknownMaterial({ file, path: [field, i, "material"], written: material }, materials),
      ];
    }),
  );
  const blended = (record.blend ?? []).flatMap((part, i) => {
    const mention = { file, path: ["blend", i, "glaze"], written: part.glaze };
    return follow(mention, glazes.ids, glazeLookup(glazes)).problems;
  });
  return [...weighed, ...blended];
}

/** A warning: the glaze is published without what nobody can work out. */
function unknownMaterial({ file, path, written }: Mention, known: Known): Problem {
  const near = findNearMaterials(written, known.values());
  const meant = near.length > 0 ? `Did you mean ${listQuoted(near)}? Otherwise write` : "Write";
  const hint = `${meant} a record of it in recipes/materials, with its formula or the analysis from its supplier's sheet. Until then this glaze has no chemistry, and nobody is warned of what this material holds.`;
  const message = `There is no material “${written}”`;
  return problemOfFile(file, { code: "unknown-material", message, hint }, path, "warning");
}

function listQuoted(words: readonly string[]): string {
  const quoted = words.map((word) => `“${word}”`);
  const last = quoted.at(-1) ?? "";
  return quoted.length > 1 ? `${quoted.slice(0, -1).join(", ")} or ${last}` : last;
}

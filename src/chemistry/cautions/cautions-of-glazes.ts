/** The cautions for every glaze of an archive, with or without chemistry. */
import type { Archive } from "../../records/archive.ts";
import { idKey } from "../../terms/ids.ts";
import { findMaterialOf } from "../from-records.ts";
import type { GlazeChemistryResult } from "../glazes.ts";
import type { AnalysedMaterial, FindMaterial } from "../materials.ts";
import { type Caution, findCautions } from "./cautions.ts";

/**
 * The cautions of every mixed or blended glaze, from the materials that are known; a bought glaze
 * has none here, its label speaks for it.
 *
 * @returns by the keys of `archive.glazes`
 */
export function cautionsOfGlazes(
  archive: Pick<Archive, "glazes" | "materials">,
  chemistry: ReadonlyMap<string, GlazeChemistryResult>,
): ReadonlyMap<string, readonly Caution[]> {
  const findMaterial = findMaterialOf(archive);
  return new Map(
    [...archive.glazes.keys()].map((key) => {
      const ids = materialIdsIn(key, archive.glazes, new Set());
      const result = chemistry.get(key);
      const fired = result?.ok ? result.chemistry : null;
      return [key, findCautions(knownMaterials(ids, findMaterial), fired)];
    }),
  );
}

/** Ids of all materials in a glaze and in the glazes it is blended from, each once. */
function materialIdsIn(
  key: string,
  glazes: Archive["glazes"],
  seen: Set<string>,
): readonly string[] {
  const record = glazes.get(key)?.record;
  if (!record || seen.has(key)) return [];
  seen.add(key);
  const own = [...(record.ingredients ?? []), ...(record.additions ?? [])];
  const blended = (record.blend ?? []).flatMap(({ glaze }) =>
    materialIdsIn(idKey(glaze), glazes, seen),
  );
  return [...new Set([...own.map(({ material }) => idKey(material)), ...blended])];
}

function knownMaterials(
  ids: readonly string[],
  findMaterial: FindMaterial,
): readonly AnalysedMaterial[] {
  return ids.flatMap((id) => {
    const found = findMaterial(id);
    return found.ok ? [found.material] : [];
  });
}

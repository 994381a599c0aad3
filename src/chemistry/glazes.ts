/** The chemistry of every glaze of an archive, or the reasons why there is none. */
import type { Archive, Filed } from "../records/archive.ts";
import type { GlazeRecord } from "../records/glaze.ts";
import type { Analysis } from "./analysis.ts";
import { type FiredChemistry, findFiredChemistry } from "./fired-chemistry.ts";
import { materialFinder } from "./materials.ts";
import { type GlazeResult, glazeFinder, type Making, type MixedGlaze } from "./mixed-glazes.ts";
import type { Note } from "./notes.ts";
import { notWorked, type Worked } from "./reasons.ts";

/** What is published of a glaze's chemistry, and the raw mixture it follows from. */
export interface GlazeChemistry extends FiredChemistry {
  readonly raw: Analysis;
  /** What was done with the figures of its materials, and what to mind. */
  readonly notes: readonly Note[];
}

export type GlazeChemistryResult = Worked<{ readonly chemistry: GlazeChemistry }>;

/** The materials of an archive, then the theoretical minerals. */
export function findMaterialOf(archive: Pick<Archive, "materials">) {
  const sources = [...archive.materials.values()].map(({ id, record }) => ({ id, ...record }));
  return materialFinder(sources);
}

/**
 * Works out every glaze of an archive.
 *
 * @returns a result for each, by the keys of `archive.glazes`
 */
export function chemistryOfGlazes(
  archive: Pick<Archive, "glazes" | "materials">,
): ReadonlyMap<string, GlazeChemistryResult> {
  const glazes = [...archive.glazes.values()].map(toMixedGlaze);
  const findGlaze = glazeFinder(glazes, findMaterialOf(archive));
  return new Map(
    [...archive.glazes].map(([key, { id, record }]) => [key, toResult(record, findGlaze(id))]),
  );
}

function toResult(record: GlazeRecord, found: GlazeResult): GlazeChemistryResult {
  if (!found.ok) return found;
  const fired = findFiredChemistry(found.raw);
  if (fired) return { ok: true, chemistry: { ...fired, raw: found.raw, notes: found.notes } };
  return notWorked(
    "nothing-left",
    `Nothing of ${record.name} would be left after the fire`,
    "Look at the formulas of its materials.",
  );
}

function toMixedGlaze({ id, record }: Filed<GlazeRecord>): MixedGlaze {
  return { id, name: record.name, making: toMaking(record) };
}

function toMaking({ ingredients, additions, blend, by }: GlazeRecord): Making {
  if (ingredients) return { kind: "recipe", recipe: { ingredients, additions: additions ?? [] } };
  if (blend) return { kind: "blend", by: by ?? "weight", parts: blend };
  return { kind: "bought" };
}

/** The chemistry of every glaze of an archive, or the reasons why there is none. */
import type { Archive } from "../records/archive.ts";
import type { GlazeRecord } from "../records/glaze.ts";
import type { Analysis } from "./analysis.ts";
import { type FiredChemistry, findFiredChemistry } from "./fired-chemistry.ts";
import { findMaterialOf, mixedGlazesOf } from "./from-records.ts";
import { type GlazeResult, glazeFinder } from "./mixed-glazes.ts";
import type { Note } from "./notes.ts";
import { notWorked, type Worked } from "./why-no-chemistry.ts";

/** What is published of a glaze's chemistry, and the raw mixture it follows from. */
export interface GlazeChemistry extends FiredChemistry {
  readonly raw: Analysis;
  /** What was done with the figures of its materials, and what to mind. */
  readonly notes: readonly Note[];
}

export type GlazeChemistryResult = Worked<{ readonly chemistry: GlazeChemistry }>;

/**
 * Works out every glaze of an archive.
 *
 * @returns a result for each, by the keys of `archive.glazes`
 */
export function chemistryOfGlazes(
  archive: Pick<Archive, "glazes" | "materials">,
): ReadonlyMap<string, GlazeChemistryResult> {
  const findGlaze = glazeFinder(mixedGlazesOf(archive), findMaterialOf(archive));
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

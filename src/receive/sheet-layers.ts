/** The layers that a spreadsheet's row has on one line, in short form. */
import type { FieldValue } from "../reader/render-record.ts";
import type { ShortNames } from "../reader/short-form/names.ts";
import { readShortForm } from "../reader/short-form/read-short-form.ts";

/** The layers as a record writes them, or why the line cannot be read. */
export type LayersRead =
  | { readonly ok: true; readonly layers: readonly FieldValue[] }
  | { readonly ok: false; readonly why: string };

/** Reads the line of a row that names a set, or none. */
export type ReadLayers = (line: string, set: string | null) => LayersRead;

/** @param namesFor what a line may name, for a row with this in its column for the set */
export function layersReader(namesFor: (set: string | null) => ShortNames): ReadLayers {
  return (line, set) => {
    const { steps, faults } = readShortForm(line, namesFor(set));
    if (faults.length === 0) return { ok: true, layers: steps.map(({ layer }) => layer) };
    const told = faults.map(
      ({ from, to, message, hint }) => `“${line.slice(from, to)}”: ${message}. ${hint}`,
    );
    return { ok: false, why: `Its layers “${line}” cannot be read. ${told.join(" ")}` };
  };
}

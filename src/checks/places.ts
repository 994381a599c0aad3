/** Where problems of a coat stack are shown. */
import type { CoatStep, FiredStep, Firing, Tile, TileStep } from "../records/archive.ts";
import type { FieldPath } from "../records/problem.ts";
import { idKey } from "../terms/ids.ts";

/** A field of a step in the tile's file; all layers for a firing that a load list added. */
export function stepPath(step: TileStep, ...fields: FieldPath): FieldPath {
  return step.at === null ? ["layers"] : ["layers", step.at, ...fields];
}

/** The field that names a glaze in a layer or at an end of a fade. */
export function glazePath(coat: CoatStep, glaze: string): FieldPath {
  if (coat.glazes.length === 1) return stepPath(coat, "glaze");
  return stepPath(coat, "fade", idKey(coat.glazes[0]) === idKey(glaze) ? "from" : "to");
}

/** A field of the tile's own file, or of the file that is named. */
export interface FoundAt {
  readonly file?: string;
  readonly path: FieldPath;
}

/** The step that names a firing, or else the entry of the load list that put the tile into it. */
export function firedPlace(tile: Tile, step: FiredStep, firing: Firing): FoundAt {
  if (step.at !== null) return { path: stepPath(step, "fired") };
  const { file } = firing;
  if (step.shelf === null) return { file, path: ["tiles"] };
  const entries = firing.record.tiles?.[step.shelf] ?? [];
  const entry = entries.findIndex((codes) => codes.some((code) => idKey(code) === idKey(tile.id)));
  return { file, path: ["tiles", step.shelf, ...(entry < 0 ? [] : [entry])] };
}

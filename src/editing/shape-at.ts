/** What may be written at a place of a record. */
import type { FieldPath } from "../records/problem.ts";
import type { MapShape, Shape } from "./shape.ts";

/** The shapes that the place may have: none where no field is declared there. */
export function shapesAt(root: Shape, path: FieldPath): readonly Shape[] {
  return path.reduce<readonly Shape[]>(
    (shapes, step) => shapes.flatMap((it) => stepInto(it, step)),
    [root],
  );
}

function stepInto(shape: Shape, step: string | number): readonly Shape[] {
  // One value where a list might stand counts as its only entry.
  if (typeof step === "number") return shape.entries ? [shape.entries] : [];
  const declared = shape.maps.flatMap(({ fields }) => fields.get(step) ?? []);
  if (declared.length > 0) return declared;
  return [
    ...(shape.values ? [shape.values] : []),
    ...(shape.maps.length === 0 && shape.entries ? stepInto(shape.entries, step) : []),
  ];
}

/** Of maps that a place may be, those that have all of some fields; all where none has. */
export function mapsWith(shapes: readonly Shape[], beside: readonly string[]): readonly MapShape[] {
  const maps = shapes.flatMap((shape) => shape.maps);
  const fitting = maps.filter(({ fields }) => beside.every((name) => fields.has(name)));
  return fitting.length > 0 ? fitting : maps;
}

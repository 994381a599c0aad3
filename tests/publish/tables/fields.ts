/** Walks the JSON files: every field that their schemas have, and every value that stands there. */
import * as z from "zod";
import { rowSchemas } from "../../../src/publish/data/row-schemas.ts";

/** Every field that holds a text, a number or yes and no, as a path: `tiles.layers.coats`. */
export function leavesOf(schema: z.ZodType, path: string): readonly string[] {
  if (schema instanceof z.ZodNullable) return leavesOf(schema.unwrap() as z.ZodType, path);
  if (schema instanceof z.ZodArray) return leavesOf(schema.element as z.ZodType, path);
  if (schema instanceof z.ZodRecord) return [`${path}.key`, `${path}.value`];
  const inner = innerOf(schema);
  if (inner === null) return [path];
  return Object.entries(inner).flatMap(([name, each]) => leavesOf(each, `${path}.${name}`));
}

function innerOf(schema: z.ZodType): Readonly<Record<string, z.ZodType>> | null {
  if (schema instanceof z.ZodObject) return schema.shape;
  if (schema instanceof z.ZodTuple)
    return Object.fromEntries(Object.entries(schema.def.items)) as Record<string, z.ZodType>;
  return null;
}

export const allLeaves: readonly string[] = Object.entries(rowSchemas).flatMap(([file, row]) =>
  leavesOf(row, file),
);

/** Every value that stands at a field of some rows; nothing of one that is null. */
export function valuesAt(rows: readonly unknown[], path: string): readonly unknown[] {
  const [, ...names] = path.split(".");
  return names.reduce<readonly unknown[]>((found, name) => found.flatMap(step(name)), rows);
}

function step(name: string) {
  return (value: unknown): readonly unknown[] => {
    const of = value as Readonly<Record<string, unknown>>;
    const isMap = (name === "key" || name === "value") && !(name in of);
    if (isMap) return (name === "key" ? Object.keys(of) : Object.values(of)).filter(isThere);
    const inner = of[name];
    return (Array.isArray(inner) && !isTuple(inner) ? inner : [inner]).filter(isThere);
  };
}

const isThere = (value: unknown) => value !== null && value !== undefined;

/** Lists of numbers are of fixed length, and read by their places. */
function isTuple(value: readonly unknown[]): boolean {
  return value.length > 0 && value.every((each) => typeof each === "number");
}

/** Names of fields that were left empty, and that nobody declared. */
import type * as z from "zod";
import { type JsonSchema, jsonSchemaOf } from "./json-schema.ts";
import type { FieldFault } from "./problem.ts";
import { unknownField } from "./read.ts";

/**
 * The fault of a field that was left empty where there is no such field: a slip in a name must be
 * told before anything is filled in. Undefined where the field is declared, or where its author
 * makes the names (jars, makers, shelves), or where what lies around it is faulty itself.
 *
 * @param path the names that lead to the field, its own the last; entries of lists have none
 */
export function findUndeclared(
  schema: z.ZodType,
  path: readonly string[],
): Omit<FieldFault, "path"> | undefined {
  const key = path.at(-1);
  const around = path.slice(0, -1).reduce(stepInto, mapsIn(describe(schema)));
  if (key === undefined || around.length === 0) return undefined;
  if (around.some((map) => fieldOf(map, key) !== undefined)) return undefined;
  const known = around.flatMap((map) => Object.keys(map.properties ?? {}));
  return unknownField(key, [...new Set(known)]);
}

const described = new WeakMap<z.ZodType, JsonSchema>();

function describe(schema: z.ZodType): JsonSchema {
  const known = described.get(schema) ?? jsonSchemaOf(schema);
  described.set(schema, known);
  return known;
}

function stepInto(maps: readonly JsonSchema[], name: string): readonly JsonSchema[] {
  return maps.flatMap((map) => mapsIn(fieldOf(map, name) ?? {}));
}

/** The field of that name in a map; for a map of its author's own names, any. */
function fieldOf({ properties, additionalProperties }: JsonSchema, name: string) {
  if (isSchema(properties) && Object.hasOwn(properties, name))
    return properties[name] as JsonSchema;
  return isSchema(additionalProperties) ? additionalProperties : undefined;
}

/** The maps that a schema allows: itself, its entries, any of its forms. */
function mapsIn(schema: JsonSchema): readonly JsonSchema[] {
  if (isSchema(schema.properties) || isSchema(schema.additionalProperties)) return [schema];
  const forms = Array.isArray(schema.anyOf) ? (schema.anyOf as JsonSchema[]) : [];
  return [...forms, ...(isSchema(schema.items) ? [schema.items] : [])].flatMap(mapsIn);
}

function isSchema(value: unknown): value is JsonSchema {
  return typeof value === "object" && value !== null;
}

/** A field of the JSON files by its path: what their schemas say of it. */
import * as z from "zod";
import { rowSchemas } from "../row-schemas.ts";

interface Field {
  readonly schema: z.ZodType;
  /** Whether it, or anything that it is a part of, may be null. */
  readonly nullable: boolean;
  readonly description: string | undefined;
}

/**
 * @param path the file and the names of the fields, as in `tiles.layers.coats`. What is in a list is
 * named as its list; a place in a list of fixed length by its number from 0; in a map of any names,
 * `key` is the name and `value` what it leads to.
 * @throws where there is no such field
 */
export function fieldAt(path: string): Field {
  const [file = "", ...names] = path.split(".");
  const row: z.ZodType | undefined = rowSchemas[file as keyof typeof rowSchemas];
  if (row === undefined) throw new Error(`No data file has the field ${path}`);
  const begin: Field = { schema: row, nullable: false, description: undefined };
  return names.reduce((within, name) => innermost(step(within, name, path)), begin);
}

function step({ schema, nullable }: Field, name: string, path: string): Field {
  const inner = partOf(schema, name);
  if (inner === undefined) throw new Error(`No data file has the field ${path}`);
  return { schema: inner, nullable, description: inner.description };
}

function partOf(schema: z.ZodType, name: string): z.ZodType | undefined {
  if (schema instanceof z.ZodObject) return schema.shape[name];
  if (schema instanceof z.ZodTuple) return schema.def.items[Number(name)] as z.ZodType | undefined;
  if (schema instanceof z.ZodRecord)
    return (name === "key" ? schema.keyType : schema.valueType) as z.ZodType;
  return undefined;
}

/** Without the list, and without the null, that it may be. */
function innermost({ schema, nullable, description }: Field): Field {
  const inner =
    schema instanceof z.ZodNullable
      ? schema.unwrap()
      : schema instanceof z.ZodArray
        ? schema.element
        : undefined;
  if (inner === undefined) return { schema, nullable, description };
  const within = inner as z.ZodType;
  return innermost({
    schema: within,
    nullable: nullable || schema instanceof z.ZodNullable,
    description: description ?? within.description,
  });
}

/**
 * What may be written in a field, as whoever helps to write it needs to know it: its sentence, its choices,
 * what it may name, and the fields or entries in it. Everything follows from the schemas.
 */
import type { Named } from "../records/fields.ts";
import { type JsonSchema, jsonSchemaOf } from "../records/json-schema.ts";
import { type RecordKind, recordKinds } from "../records/kinds.ts";
import { remember } from "../terms/remember.ts";

/** Whatever may be written in one place. */
export interface Shape {
  /** What the field says; empty for an entry of a list. */
  readonly sentence: string;
  /** The words to choose from; empty where it is free. */
  readonly choices: readonly string[];
  /** True where nothing but the choices may be written. */
  readonly isClosed: boolean;
  /** What it may name. */
  readonly names: readonly Named[];
  /** Whether it may be one value: a word, a number, a text. */
  readonly isScalar: boolean;
  /** The maps with fields of their own that it may be; more than one where its keys tell which. */
  readonly maps: readonly MapShape[];
  /** What stands behind names of the author's own, where it may be a map of such. */
  readonly values: Shape | undefined;
  /** What each entry is, where it may be a list. */
  readonly entries: Shape | undefined;
}

/** A map with fields that are declared. */
export interface MapShape {
  readonly fields: ReadonlyMap<string, FieldShape>;
  /** Fields of which it carries no more than one. */
  readonly oneOf: readonly string[];
  /** True where it carries one of them, and no fewer. */
  readonly isOneNeeded: boolean;
}

export interface FieldShape extends Shape {
  readonly required: boolean;
}

/** The shape of a record of some kind: a map. */
export const shapeOfRecord: (kind: RecordKind["name"]) => Shape = remember(
  recordKinds.length,
  (kind) => {
    const { schema } = recordKinds.find(({ name }) => name === kind) ?? {};
    return schema ? shapeOf(jsonSchemaOf(schema, markNames)) : nothing;
  },
  (kind) => kind,
);

const namesMark = "x-names";

function markNames(names: readonly Named[]): JsonSchema {
  return { type: ["string", "number"], [namesMark]: names };
}

const nothing: Shape = {
  ...{ sentence: "", choices: [], isClosed: false, names: [], isScalar: false, maps: [] },
  ...{ values: undefined, entries: undefined },
};

function shapeOf(schema: JsonSchema): Shape {
  const forms = schema.anyOf ? (schema.anyOf as JsonSchema[]).map(shapeOf) : [shapeOfForm(schema)];
  const scalars = forms.filter(({ isScalar }) => isScalar);
  return {
    sentence: String(schema.description ?? ""),
    choices: [...new Set(forms.flatMap(({ choices }) => choices))],
    isClosed: scalars.length > 0 && scalars.every(({ isClosed }) => isClosed),
    names: [...new Set(forms.flatMap(({ names }) => names))],
    isScalar: scalars.length > 0,
    maps: forms.flatMap(({ maps }) => maps),
    values: forms.find(({ values }) => values)?.values,
    entries: forms.find(({ entries }) => entries)?.entries,
  };
}

function shapeOfForm(schema: JsonSchema): Shape {
  if (isSchema(schema.properties)) return { ...nothing, maps: [mapOf(schema)] };
  if (isSchema(schema.additionalProperties))
    return { ...nothing, values: shapeOf(schema.additionalProperties) };
  if (isSchema(schema.items)) return { ...nothing, entries: shapeOf(schema.items) };
  const choices = wordsOf(schema);
  return {
    ...nothing,
    ...{ choices, isClosed: choices.length > 0, isScalar: true },
    names: (schema[namesMark] ?? []) as readonly Named[],
  };
}

/** YAML tools may read a choice as a number or a truth value, which stands beside the word. */
function wordsOf(schema: JsonSchema): readonly string[] {
  const words = schema.const === undefined ? schema.enum : [schema.const];
  return ((words ?? []) as unknown[]).filter((word) => typeof word === "string");
}

function mapOf(schema: JsonSchema): MapShape {
  const required = new Set((schema.required ?? []) as string[]);
  const fields = Object.entries(schema.properties as Record<string, JsonSchema>);
  const needed = (schema.oneOf ?? []) as { readonly required: readonly string[] }[];
  const { required: apart = [] } = (schema.not ?? {}) as { readonly required?: readonly string[] };
  return {
    fields: new Map(
      fields.map(([name, field]) => [name, { ...shapeOf(field), required: required.has(name) }]),
    ),
    oneOf: needed.length > 0 ? needed.flatMap((each) => each.required) : apart,
    isOneNeeded: needed.length > 0,
  };
}

function isSchema(value: unknown): value is JsonSchema {
  return typeof value === "object" && value !== null;
}

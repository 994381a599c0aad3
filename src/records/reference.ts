/** The potter's reference: every field of every record, from the words beside its schema. */
import { remember } from "../terms/remember.ts";
import { type JsonSchema, jsonSchemaOf } from "./json-schema.ts";
import { type RecordKind, recordKinds } from "./kinds.ts";

export interface ReferenceField {
  /** As it is written; the fields of a map are led by its name: `photo › crop`. */
  readonly name: string;
  readonly explanation: string;
  /** The words to choose from; empty where it is free. */
  readonly choices: readonly string[];
  readonly required: boolean;
  /** True where own words are as good as the choices. */
  readonly ownWords: boolean;
}

export interface ReferencePage {
  readonly kind: RecordKind["name"];
  readonly file: string;
  readonly sentence: string;
  readonly fields: readonly ReferenceField[];
}

/** The whole reference, a page a kind of record. */
export const makeReference = remember<void, readonly ReferencePage[]>(1, listReference, () => "");

function listReference(): readonly ReferencePage[] {
  return recordKinds.map(({ name, file, sentence, schema }) => ({
    kind: name,
    file,
    sentence,
    fields: fieldsOf(jsonSchemaOf(schema), ""),
  }));
}

function fieldsOf(schema: JsonSchema, prefix: string): ReferenceField[] {
  const rows = new Map<string, ReferenceField>();
  const maps = mapsIn(schema);
  for (const { properties } of maps) {
    for (const [key, field] of Object.entries(properties as Record<string, JsonSchema>)) {
      const name = prefix + key;
      const required = maps.every((map) => ((map.required ?? []) as string[]).includes(key));
      rows.set(name, { name, ...describe(field), required });
      for (const row of fieldsOf(field, `${name} › `)) rows.set(row.name, row);
    }
  }
  return [...rows.values()];
}

/** The maps with named fields that a schema allows: itself, its entries, any of its forms. */
function mapsIn(schema: JsonSchema): JsonSchema[] {
  if (schema.properties) return [schema];
  const inside = [
    ...((schema.anyOf ?? []) as JsonSchema[]),
    ...(isSchema(schema.items) ? [schema.items] : []),
    ...(isSchema(schema.additionalProperties) ? [schema.additionalProperties] : []),
  ];
  return inside.flatMap(mapsIn);
}

function isSchema(value: unknown): value is JsonSchema {
  return typeof value === "object" && value !== null;
}

function describe(field: JsonSchema) {
  const forms = [field, ...((field.anyOf ?? []) as JsonSchema[])];
  const choices = forms.flatMap((form) => [
    ...((form.enum ?? []) as unknown[]),
    ...((isSchema(form.items) ? (form.items.enum ?? []) : []) as unknown[]),
  ]);
  const words = choices.filter((word): word is string => typeof word === "string");
  return {
    explanation: String(field.description ?? ""),
    choices: [...new Set(words)],
    ownWords: words.length > 0 && forms.some((form) => form.type === "string" && !form.enum),
  };
}

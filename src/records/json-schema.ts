/** JSON Schemas of the records, for editors that check YAML while it is written. */
import * as z from "zod";
import { type EditorHint, editorHints, type Named } from "./fields.ts";

export type JsonSchema = { [key: string]: unknown };

/** What is said of a field that names things, in place of its form; undefined for its form alone. */
export type NamesSchema = (names: readonly Named[]) => JsonSchema | undefined;

/**
 * The JSON Schema (2020-12) of a record as its author writes it. Where YAML tools may take a
 * scalar for a number or a truth value, both forms are allowed.
 */
export function jsonSchemaOf(
  schema: z.ZodType,
  namesSchema: NamesSchema = () => undefined,
): JsonSchema {
  return z.toJSONSchema(schema, {
    io: "input",
    unrepresentable: "any",
    override: ({ zodSchema, jsonSchema }) => {
      const hint = editorHints.get(zodSchema as unknown as z.ZodType);
      if (hint) replaceForm(jsonSchema, fromHint(hint, jsonSchema, namesSchema));
    },
  }) as JsonSchema;
}

/** What zod says of the form goes; only what explains the field stays. */
function replaceForm(described: JsonSchema, form: JsonSchema): void {
  for (const key of Object.keys(described)) if (key !== "description") delete described[key];
  Object.assign(described, form);
}

function fromHint(
  hint: EditorHint,
  { minItems, maxItems }: JsonSchema,
  namesSchema: NamesSchema,
): JsonSchema {
  const partOf = (schema: object) => partFor(schema, namesSchema);
  if (hint.kind === "scalar")
    return (hint.names?.length && namesSchema(hint.names)) || { ...hint.schema };
  if (hint.kind === "demanding") return { ...partOf(hint.of), ...demandOf(hint) };
  if (hint.kind === "one-or-many") {
    const one = partOf(hint.of);
    return { anyOf: [one, { type: "array", items: one, minItems, maxItems }] };
  }
  const forms = hint.of.map(partOf);
  const [only] = forms;
  return forms.length === 1 && only ? only : { anyOf: forms };
}

/** Exactly one of some keys, or no two of them. */
function demandOf({ keys, exactly }: Extract<EditorHint, { kind: "demanding" }>): JsonSchema {
  const each = keys.map((key) => ({ required: [key] }));
  return exactly ? { oneOf: each } : { not: { required: keys } };
}

function partFor(schema: object, namesSchema: NamesSchema): JsonSchema {
  const { $schema: _, ...part } = jsonSchemaOf(schema as z.ZodType, namesSchema);
  return part;
}

/** Lists and maps of fields. */
import * as z from "zod";
import { byWord } from "../../terms/by-word.ts";
import { longestList, mostChoices } from "../../terms/limits.ts";
import { editorHints } from "./scalar.ts";

/** A field that must be there, with the words that explain it to a potter. */
export function required<S extends z.ZodType>(explanation: string, schema: S): S {
  return schema.describe(explanation);
}

/** A field that may be left out, with the words that explain it to a potter. */
export function optional<S extends z.ZodType>(explanation: string, schema: S) {
  return schema.optional().describe(explanation);
}

/** One value or a list of them, no more than `most`; the value is always a list. */
export function oneOrMany<Out, In>(schema: z.ZodType<Out, In>, most = mostChoices) {
  const many = z.preprocess((value, context) => {
    if (value === undefined || Array.isArray(value)) return value;
    if (typeof value === "string") addIfWithoutBrackets(value, schema, context);
    return [value];
  }, z.array(schema).min(1).max(most));
  editorHints.add(many, { kind: "one-or-many", of: schema });
  return many;
}

/** `gloss, satin` is one value to YAML, and no choice has a comma in it. */
function addIfWithoutBrackets(value: string, schema: z.ZodType, context: z.RefinementCtx): void {
  const parts = value.split(",").map((part) => part.trim());
  if (parts.length < 2 || schema.safeParse(value).success) return;
  if (!parts.every((part) => schema.safeParse(part).success)) return;
  context.addIssue({
    code: "custom",
    message: `“${value}” is read as one value\nWrite several between brackets: [${parts.join(", ")}].`,
    params: { code: "list-without-brackets" },
    continue: false,
  });
}

/** A list with at least one entry, and no more than `most`. */
export function list<Out, In>(schema: z.ZodType<Out, In>, most = longestList) {
  return z.array(schema).min(1).max(most);
}

/** A map from keys of the author's own to values of one kind. */
export function mapOf<Out, In>(schema: z.ZodType<Out, In>) {
  return z.record(z.string(), schema).transform((map) => byWord(Object.entries<Out>(map)));
}

type CamelCase<S> = S extends `${infer Head}-${infer Tail}`
  ? `${Head}${Capitalize<CamelCase<Tail>>}`
  : S;
type CamelKeys<T> = { readonly [K in keyof T as CamelCase<K>]: T[K] };

/**
 * A map with fields of its own, each documented where it is declared. An unknown field is a
 * fault that names the fields there are. `touch-up` in YAML is `touchUp` in TypeScript.
 */
export function fields<Shape extends z.ZodRawShape>(shape: Shape) {
  const known = Object.keys(shape).join(" ");
  return z
    .strictObject(shape, {
      error: (issue) => (issue.code === "unrecognized_keys" ? known : undefined),
    })
    .transform((value) => camelKeys(value) as CamelKeys<typeof value>);
}

function camelKeys(value: object): object {
  return Object.fromEntries(
    Object.entries(value).map(([key, entry]) => [
      key.replace(/-(\w)/gu, (_, letter: string) => letter.toUpperCase()),
      entry,
    ]),
  );
}

/** Lists and maps of fields. */
import * as z from "zod";
import { byWord } from "../../terms/by-word.ts";
import { editorHints } from "./scalar.ts";

/** A field that must be there, with the words that explain it to a potter. */
export function required<S extends z.ZodType>(explanation: string, schema: S): S {
  return schema.describe(explanation);
}

/** A field that may be left out, with the words that explain it to a potter. */
export function optional<S extends z.ZodType>(explanation: string, schema: S) {
  return schema.optional().describe(explanation);
}

/** One value or a list of them; the value is always a list. */
export function oneOrMany<Out, In>(schema: z.ZodType<Out, In>) {
  const many = z.preprocess(
    (value) => (value === undefined || Array.isArray(value) ? value : [value]),
    z.array(schema).min(1),
  );
  editorHints.add(many, { kind: "one-or-many", of: schema });
  return many;
}

/** A list with at least one entry. */
export function list<Out, In>(schema: z.ZodType<Out, In>) {
  return z.array(schema).min(1);
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

/** From a file's text to what it holds. */
import { parseYaml } from "../reader/parse-yaml.ts";
import type { Form, ParsedText, TextParser } from "../reader/parsed-text.ts";
import { remember } from "../terms/remember.ts";
import { splitRecord } from "./split-record.ts";

/** Takes a file's text apart. */
export function parseText(text: string, form: Form): ParsedText {
  if (form === "yaml") return { ...parseYaml(text), notes: "" };
  const split = splitRecord(text);
  if (!split.ok) return { source: null, notes: "", blanks: [], faults: [split.fault] };
  return { ...parseYaml(split.yaml), notes: split.notes };
}

/** The YAML of a text, its lines numbered as in the file; undefined where none can be found. */
export function yamlOf(text: string, form: Form): string | undefined {
  if (form === "yaml") return text;
  const split = splitRecord(text);
  return split.ok ? split.yaml : undefined;
}

/** So many texts are remembered, for whoever reads an archive again and again: more than any has records. */
const mostTexts = 50_000;

const remembered = remember(
  mostTexts,
  ({ text, form }: { readonly text: string; readonly form: Form }) => parseText(text, form),
  ({ text, form }) => `${form}\n${text}`,
);

/** What the reader takes texts apart with. */
export const textParser: TextParser = {
  parse: (text, form) => remembered({ text, form }),
  yamlOf,
};

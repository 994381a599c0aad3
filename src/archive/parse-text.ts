/** From a file's text to what it holds. */
import { createHash } from "node:crypto";
import { parseYaml } from "../reader/parse-yaml.ts";
import type { Form, ParsedText, TextParser } from "../reader/parsed-text.ts";
import type { ParseCache } from "./parse-cache.ts";
import { splitRecord } from "./split-record.ts";

/** Goes up when the same text is read differently than before. */
const readerVersion = 2;

/** Parses a file's text, or remembers what came of it. */
export function parseText(text: string, form: Form, cache: ParseCache): ParsedText {
  const hash = createHash("sha256").update(`${readerVersion}\n${form}\n${text}`).digest("hex");
  const remembered = cache.get(hash);
  if (remembered) return remembered;
  const parsed = form === "markdown" ? parseMarkdown(text) : { ...parseYaml(text), notes: "" };
  cache.put(hash, parsed);
  return parsed;
}

function parseMarkdown(text: string): ParsedText {
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

/** What the reader takes texts apart with. */
export function textParser(cache: ParseCache): TextParser {
  return { parse: (text, form) => parseText(text, form, cache), yamlOf };
}

/** From a file's text to what it holds. */
import { createHash } from "node:crypto";
import type { ParseCache, ParsedText } from "./parse-cache.ts";
import { parseYaml } from "./parse-yaml.ts";
import { splitRecord } from "./split-record.ts";

/** How a file is written: Markdown with front matter, or nothing but YAML. */
export type Form = "markdown" | "yaml";

/** Goes up when the same text is read differently than before. */
const readerVersion = 1;

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
  if (!split.ok) return { source: null, notes: "", faults: [split.fault] };
  return { ...parseYaml(split.yaml), notes: split.notes };
}

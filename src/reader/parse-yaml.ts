/** From YAML to a source, or to faults in a potter's words. */
import type { SourceMap } from "../records/read.ts";
import { longestYaml, mostCommas, mostLines } from "../terms/limits.ts";
import { indexLines } from "./line-index.ts";
import type { BlankField } from "./parsed-text.ts";
import { readPlainYaml } from "./plain-yaml.ts";
import type { Fault, TextFault } from "./problem-of-file.ts";
import { findLostWords } from "./yaml-comments.ts";
import { parseYamlDocument, startOf } from "./yaml-document.ts";
import { findSyntaxFault } from "./yaml-faults.ts";
import { toSource } from "./yaml-source.ts";
import { type FaultAt, tooMany } from "./yaml-words.ts";

export interface YamlReading {
  /** Null where nothing can be read. */
  readonly source: SourceMap | null;
  readonly blanks: readonly BlankField[];
  readonly faults: readonly TextFault[];
}

/**
 * Parses YAML of which every scalar is kept as text and every empty value is left out.
 *
 * @param yaml its lines numbered as in the file they come from
 */
export function parseYaml(yaml: string): YamlReading {
  const source = readPlainYaml(yaml);
  return source ? { source, blanks: [], faults: [] } : parseAnyYaml(yaml);
}

/** The same of YAML however it is written, with everything that is wrong with it. */
export function parseAnyYaml(yaml: string): YamlReading {
  const tooLong = findTooLong(yaml);
  if (tooLong)
    return {
      source: null,
      blanks: [],
      faults: [{ severity: "error", ...tooLong, line: 1, column: 1 }],
    };
  const placeOf = indexLines(yaml);
  const place = ({ offset, ...fault }: FaultAt): TextFault => ({
    severity: "error",
    ...fault,
    ...placeOf(offset),
  });
  const document = parseYamlDocument(yaml);
  const broken = findSyntaxFault(yaml, document);
  const lost = findLostWords(yaml);
  if (broken) return { source: null, blanks: [], faults: [broken, ...lost].map(place) };
  const { source, faults, blanks } = toSource(yaml, document.contents);
  const told = [...faults, ...lost].map(place);
  if (isFields(source) || (source === undefined && faults.length === 0))
    return {
      source: source ?? {},
      blanks: blanks.map(({ path, offset }) => ({ path, ...placeOf(offset) })),
      faults: told,
    };
  const missing = source === undefined ? [] : [place(notFields(startOf(document.contents)))];
  return { source: null, blanks: [], faults: [...told, ...missing] };
}

function isFields(source: unknown): source is SourceMap {
  return typeof source === "object" && source !== null && !Array.isArray(source);
}

/** What the YAML parser would take long over: told before it begins. */
function findTooLong(yaml: string): Fault | undefined {
  if (yaml.length > longestYaml) return tooMany("letters", longestYaml);
  if (countOf(yaml, "\n") > mostLines) return tooMany("lines", mostLines);
  return countOf(yaml, ",") > mostCommas ? tooMany("commas", mostCommas) : undefined;
}

function countOf(text: string, letter: string): number {
  let count = 0;
  for (let at = text.indexOf(letter); at >= 0; at = text.indexOf(letter, at + 1)) count += 1;
  return count;
}

function notFields(offset: number): FaultAt {
  return {
    offset,
    code: "no-fields",
    message: "Here should stand fields, and something else was found",
    hint: "Write each field on a line of its own, as “name: value”.",
  };
}

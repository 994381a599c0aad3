/**
 * What the YAML parser finds wrong, in a potter's words. The parser's own sentences are for
 * programmers; its codes, and the text around the place, tell what was meant.
 */
import { isCollection, isScalar, type Scalar, visit, type YAMLError } from "yaml";
import type { Fault } from "./problem-of-file.ts";
import type { YamlDocument } from "./yaml-document.ts";
import { describeIndent } from "./yaml-indent.ts";
import { badListDash, longDash, oddSpace } from "./yaml-keys.ts";
import {
  badBackslash,
  badBeginning,
  badBlockText,
  badIndent,
  badSpace,
  bracketedName,
  type FaultAt,
  fullWidthColon,
  insideBrackets,
  listOnKeyLine,
  noColon,
  noComma,
  noSpaceAfterColon,
  severalDocuments,
  tab,
  textAfterQuote,
  tooDeep,
  twoColons,
  twoCommas,
  unclosedBracket,
  unclosedQuote,
} from "./yaml-words.ts";

/**
 * The first fault of a document's form; after the first, the parser only guesses.
 *
 * @param yaml the text the document was parsed from
 */
export function findSyntaxFault(yaml: string, document: YamlDocument): FaultAt | undefined {
  const [first] = [...document.errors, ...document.warnings].toSorted(
    (a, b) => a.pos[0] - b.pos[0],
  );
  if (!first) return undefined;
  const unclosed = findUnclosed(yaml, document);
  if (unclosed) return unclosed;
  return describe(yaml, first);
}

/** A quotation or bracket that never ends swallows what follows; its beginning is what helps. */
function findUnclosed(yaml: string, document: YamlDocument): FaultAt | undefined {
  let offset: number | undefined;
  visit(document, {
    Node: (_, node) => {
      if (!node.range || !(isUnclosedQuote(yaml, node) || isUnclosedBracket(yaml, node))) return;
      offset ??= node.range[0];
    },
  });
  if (offset === undefined) return undefined;
  const mark = yaml[offset] ?? "";
  return { offset, ...(/["']/u.test(mark) ? unclosedQuote(mark) : unclosedBracket(mark)) };
}

function isUnclosedQuote(yaml: string, node: unknown): boolean {
  if (!isScalar(node) || !isQuoted(node)) return false;
  const text = textOf(yaml, node.range);
  return text.length < 2 || text[0] !== text.at(-1);
}

function isQuoted(scalar: Scalar): boolean {
  return scalar.type === "QUOTE_DOUBLE" || scalar.type === "QUOTE_SINGLE";
}

function isUnclosedBracket(yaml: string, node: unknown): boolean {
  if (!isCollection(node) || node.flow !== true) return false;
  const text = textOf(yaml, node.range);
  return text.at(-1) !== (text[0] === "[" ? "]" : "}");
}

function textOf(yaml: string, range: readonly number[] | null | undefined): string {
  return range ? yaml.slice(range[0], range[1]) : "";
}

function describe(yaml: string, error: YAMLError): FaultAt {
  const [offset, end] = error.pos;
  const known = describeCode(yaml, error);
  if (known) return { offset, ...known };
  const lines = new Set([lineStart(yaml, offset), lineStart(yaml, Math.max(offset, end - 1))]);
  for (const start of lines) {
    const fault = describeOddCharacter(yaml, start);
    if (fault) return fault;
  }
  const own = describeLine(yaml, offset);
  if (own) return { offset, ...own };
  return describeDeeperLine(yaml, offset) ?? { offset, ...badIndent };
}

function describeCode(yaml: string, { code, pos }: YAMLError): Fault | undefined {
  switch (code) {
    case "TAB_AS_INDENT":
      return tab;
    case "MULTIPLE_DOCS":
      return severalDocuments;
    case "BAD_SCALAR_START":
      return badBeginning(yaml[pos[0]] ?? "");
    case "BAD_DQ_ESCAPE":
      return badBackslash;
    case "TAG_RESOLVE_FAILED":
    case "MULTIPLE_TAGS":
    case "BAD_COLLECTION_TYPE":
      return badBeginning("!");
    case "RESOURCE_EXHAUSTION":
      return tooDeep;
    case "NON_STRING_KEY":
      return bracketedName;
    default:
      return undefined;
  }
}

function lineStart(yaml: string, offset: number): number {
  return yaml.lastIndexOf("\n", offset - 1) + 1;
}

function lineAt(yaml: string, start: number): string {
  const end = yaml.indexOf("\n", start);
  return yaml.slice(start, end < 0 ? yaml.length : end);
}

/** A character that looks like one of YAML's own, where YAML would have its own. */
function describeOddCharacter(yaml: string, start: number): FaultAt | undefined {
  const line = lineAt(yaml, start);
  const head = /^[^"'#:]*/u.exec(line)?.[0] ?? "";
  const dash = longDash.exec(head.trimStart());
  if (dash) return { offset: start + line.search(/\S/u), ...badListDash(dash[0].trim()) };
  const space = line.slice(0, head.length + 2).search(oddSpace);
  if (space >= 0) return { offset: start + space, ...badSpace(line[space] ?? "") };
  const colon = head.search(/[：﹕]/u);
  return colon < 0 ? undefined : { offset: start + colon, ...fullWidthColon };
}

/** Looks at the line itself, where the parser's code may mean several things. */
function describeLine(yaml: string, offset: number): Fault | undefined {
  const start = lineStart(yaml, offset);
  const line = lineAt(yaml, start);
  const before = yaml.slice(start, offset);
  const after = line.slice(before.length);
  if (/^ *(?:- +)?[\w-]+:[^\s:]/u.test(line)) return noSpaceAfterColon;
  if (endsInQuotes(before)) return textAfterQuote;
  if (/:\s+-?$/u.test(before) && /^-?\s/u.test(after)) return listOnKeyLine;
  if (/[{[]/u.test(before)) return describeBrackets(line, before);
  if (/:\s+[|>]\S*$/u.test(before) || /^[|>]/u.test(after)) return badBlockText;
  const colons = line.split(/:(?=\s|$)/u).length - 1;
  if (colons === 0) return noColon(line);
  return colons > 1 ? twoColons : undefined;
}

/** Whether a quotation ends what stands on a line so far. */
function endsInQuotes(before: string): boolean {
  const begin = before.search(/["']/u);
  return (
    begin >= 0 && before.length > begin + 1 && /["']$/u.test(before.trimEnd().slice(begin + 1))
  );
}

/** Two fields between brackets without a comma are read as one; two commas as nothing at all. */
function describeBrackets(line: string, before: string): Fault {
  if (/,\s*$/u.test(before) && line[before.length] === ",") return twoCommas;
  const joined = /^[^,:{}[\]]*\s(?<name>[\p{L}\d-]+):\s/u.exec(line.slice(before.length));
  return joined?.groups?.name === undefined ? insideBrackets : noComma(joined.groups.name);
}

/** A line that begins where it belongs to nothing: the one of the fault, or the one beneath it. */
function describeDeeperLine(yaml: string, offset: number): FaultAt | undefined {
  const own = lineStart(yaml, offset);
  const next = yaml.indexOf("\n", offset) + 1;
  return describeIndent(yaml, own) ?? (next > 0 ? describeIndent(yaml, next) : undefined);
}

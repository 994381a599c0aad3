/**
 * What the YAML parser finds wrong, in a potter's words. The parser's own sentences are for
 * programmers; its codes, and the text around the place, tell what was meant.
 */
import { isCollection, isScalar, type Scalar, visit, type YAMLError } from "yaml";
import type { Fault } from "./problem-of-file.ts";
import type { YamlDocument } from "./yaml-document.ts";
import type { SourceFault } from "./yaml-source.ts";
import {
  badBackslash,
  badBeginning,
  badBlockText,
  badIndent,
  bracketedName,
  insideBrackets,
  listOnKeyLine,
  noSpaceAfterColon,
  severalDocuments,
  tab,
  textAfterQuote,
  tooDeep,
  twoColons,
  unclosedBracket,
  unclosedQuote,
  unreadable,
} from "./yaml-words.ts";

/** A fault at an offset into the text. */
export interface FaultAt extends Fault {
  readonly offset: number;
}

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
  const fault = describe(yaml, first);
  const offset = first.pos[0];
  return { ...fault, offset: fault === badIndent ? placeOfIndent(yaml, offset) : offset };
}

/** Where a value seems to go on in a deeper line, it is that line which stands wrong. */
function placeOfIndent(yaml: string, offset: number): number {
  const end = yaml.indexOf("\n", offset);
  const deeper = /^[^\n]*:[ ][^\n]*\n(?<indent>[ ]+)\S/u.exec(yaml.slice(lineStart(yaml, offset)));
  return deeper && end >= 0 ? end + 1 + (deeper.groups?.indent?.length ?? 0) : offset;
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

function describe(yaml: string, error: YAMLError): Fault {
  const offset = error.pos[0];
  switch (error.code) {
    case "TAB_AS_INDENT":
      return tab;
    case "MULTIPLE_DOCS":
      return severalDocuments;
    case "BAD_SCALAR_START":
      return badBeginning(yaml[offset] ?? "");
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
      return describeLine(yaml, offset) ?? unreadable;
  }
}

function lineStart(yaml: string, offset: number): number {
  return yaml.slice(0, offset).lastIndexOf("\n") + 1;
}

/** Looks at the line itself, where the parser's code may mean several things. */
function describeLine(yaml: string, offset: number): Fault | undefined {
  const start = lineStart(yaml, offset);
  const end = yaml.indexOf("\n", offset);
  const line = yaml.slice(start, end < 0 ? yaml.length : end);
  const before = yaml.slice(start, offset);
  const after = line.slice(before.length);
  if (/^\s*(- )?[\w-]+:[^\s:]/u.test(line)) return noSpaceAfterColon;
  if (/["']\s*$/u.test(before) && /["']\s*$/u.test(before.slice(before.search(/["']/u) + 1)))
    return textAfterQuote;
  if (/:\s+-?$/u.test(before) && /^-?\s/u.test(after)) return listOnKeyLine;
  if (/[{[]/u.test(before)) return insideBrackets;
  if (/:\s+[|>]\S*$/u.test(before) || /^[|>]/u.test(after)) return badBlockText;
  if (/:\s.*:(\s|$)/u.test(line)) return twoColons;
  return badIndent;
}

/** A fault of the source, in a potter's words. */
export function describeSourceFault(yaml: string, fault: SourceFault): FaultAt {
  const { offset } = fault;
  switch (fault.found) {
    case "duplicate-key":
      return {
        offset,
        code: "duplicate-field",
        message: `“${fault.key}” stands here a second time`,
        hint: "Keep one of the two.",
      };
    case "unseen-character":
      return {
        offset,
        code: "control-character",
        message: `A backslash in this value makes a character that nobody can see (${fault.name})`,
        hint: "Use single quotes for this value, or write the backslash twice.",
      };
    case "too-many-aliases":
      return {
        offset,
        code: "too-many-aliases",
        message: "Values are repeated here by “*” until there are too many to read",
        hint: "Write the values out where they belong.",
      };
    case "unknown-alias":
      return { offset, ...badBeginning("*") };
    case "unused-anchor":
      return { offset: yaml.lastIndexOf(`&${fault.name}`, offset), ...badBeginning("&") };
  }
}

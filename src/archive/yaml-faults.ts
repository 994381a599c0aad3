/**
 * What the YAML parser finds wrong, in a potter's words. The parser's own sentences are for
 * programmers; its codes, and the text around the place, tell what was meant.
 */
import { isCollection, isScalar, type Scalar, visit, type YAMLError } from "yaml";
import type { Fault } from "./problem-of-file.ts";
import type { YamlDocument } from "./yaml-document.ts";
import type { SourceFault } from "./yaml-source.ts";

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
  return findUnclosed(yaml, document) ?? { offset: first.pos[0], ...describe(yaml, first) };
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
  return /["']/u.test(mark)
    ? {
        offset,
        code: "unclosed-quote",
        message: `A quotation begins here with ${mark} and never ends`,
        hint: `Put another ${mark} after the last word, or take this one away.`,
      }
    : {
        offset,
        code: "unclosed-bracket",
        message: `A bracket “${mark}” opens here and is never closed`,
        hint: `Put “${mark === "[" ? "]" : "}"}” after the last entry.`,
      };
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

/** Looks at the line itself, where the parser's code may mean several things. */
function describeLine(yaml: string, offset: number): Fault | undefined {
  const start = yaml.lastIndexOf("\n", offset - 1) + 1;
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

const tab: Fault = {
  code: "tab-as-indent",
  message: "This line is indented with a tab, and YAML reads only spaces",
  hint: "Replace the tab by two spaces.",
};

const severalDocuments: Fault = {
  code: "several-documents",
  message: "A second document begins here, and a file holds one record",
  hint: "Take the line out, or give the second record a file of its own.",
};

function badBeginning(mark: string): Fault {
  return {
    code: "bad-beginning",
    message: `A value that begins with “${mark}” means something special in YAML`,
    hint: `Put the whole value in quotes, as in "${mark}…".`,
  };
}

const badBackslash: Fault = {
  code: "bad-backslash",
  message: "A backslash between double quotes means something special in YAML",
  hint: "Use single quotes for this value, or write the backslash twice.",
};

const tooDeep: Fault = {
  code: "nested-too-deep",
  message: "Lists and maps lie too deep in each other here",
  hint: "Write the record as the reference page shows; no field goes this deep.",
};

const bracketedName: Fault = {
  code: "bracketed-name",
  message: "A bracket begins a list or a map here, where a field's name belongs",
  hint: "Put the value in quotes if the bracket is part of the text.",
};

const noSpaceAfterColon: Fault = {
  code: "no-space-after-colon",
  message: "There is no space after the colon, so no field is seen here",
  hint: "Write a space between the colon and the value, as in “name: Tidewrack”.",
};

const textAfterQuote: Fault = {
  code: "text-after-quote",
  message: "There is text after the closing quote",
  hint: "Put the whole value into one pair of quotes; an apostrophe inside needs double quotes around it.",
};

const listOnKeyLine: Fault = {
  code: "list-on-key-line",
  message: "A list begins on the line of its field's name",
  hint: "Begin the list on the next line, indented, each entry with “- ”.",
};

const insideBrackets: Fault = {
  code: "bad-brackets",
  message: "What stands between these brackets cannot be read",
  hint: "Put one comma between two entries, as in [breaking, pooling] or {top: 6, bottom: 5}.",
};

const badBlockText: Fault = {
  code: "bad-block-text",
  message: "Nothing may follow “|” or “>” on its line",
  hint: "Begin the text on the next line, indented.",
};

const twoColons: Fault = {
  code: "two-colons",
  message: "A second colon with a space after it stands on this line, where one field is expected",
  hint: "Put the value in quotes if the colon is part of the text; otherwise begin a new line.",
};

const badIndent: Fault = {
  code: "bad-indent",
  message: "This line does not stand under those it belongs to",
  hint: "Begin all fields of one record, and all entries of one list, in the same column.",
};

const unreadable: Fault = {
  code: "unreadable-yaml",
  message: "This line cannot be read as YAML",
  hint: "Look for a missing quote, bracket or comma on this line and the one above.",
};

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

/** The faults of YAML in a potter's words. */
import type { Severity } from "../records/problem.ts";
import { longestKey, longestValue, mostRepeated, mostValues } from "../terms/limits.ts";
import type { Fault } from "./problem-of-file.ts";

/** A fault at an offset into the text; an error unless it says otherwise. */
export interface FaultAt extends Fault {
  readonly offset: number;
  readonly severity?: Severity;
}

/** A fault by its code, what is wrong, and how to put it right. */
function fault(code: string, message: string, hint: string): Fault {
  return { code, message, hint };
}

export function unclosedQuote(mark: string): Fault {
  return fault(
    "unclosed-quote",
    `A quotation begins here with ${mark} and never ends`,
    `Put another ${mark} after the last word, or take this one away.`,
  );
}

export function unclosedBracket(mark: string): Fault {
  return fault(
    "unclosed-bracket",
    `A bracket “${mark}” opens here and is never closed`,
    `Put “${mark === "[" ? "]" : "}"}” after the last entry.`,
  );
}

export const tab = fault(
  "tab-as-indent",
  "Here stands a tab, and a line may begin with spaces only",
  "Replace the tab by two spaces.",
);

export const severalDocuments = fault(
  "several-documents",
  "A second document begins here, and a file holds one record",
  "Take the line out, or give the second record a file of its own.",
);

export function badBeginning(mark: string): Fault {
  return fault(
    "bad-beginning",
    `A value that begins with “${mark}” means something special in YAML`,
    `Put the whole value in quotes, as in "${mark}…".`,
  );
}

export const badBackslash = fault(
  "bad-backslash",
  "A backslash between double quotes means something special in YAML",
  "Use single quotes for this value, or write the backslash twice.",
);

export const tooDeep = fault(
  "nested-too-deep",
  "Lists and maps lie too deep in each other here",
  "Write the record as the reference page shows; no field goes this deep.",
);

export const bracketedName = fault(
  "bracketed-name",
  "A bracket begins a list or a map here, where a field's name belongs",
  "Put the value in quotes if the bracket is part of the text.",
);

export const noSpaceAfterColon = fault(
  "no-space-after-colon",
  "There is no space after the colon, so no field is seen here",
  "Write a space between the colon and the value, as in “name: Tidewrack”.",
);

export const textAfterQuote = fault(
  "text-after-quote",
  "There is text after the closing quote",
  "Put the whole value into one pair of quotes; an apostrophe inside needs double quotes around it.",
);

export const listOnKeyLine = fault(
  "list-on-key-line",
  "A list begins on the line of its field's name",
  "Begin the list on the next line, indented, each entry with “- ”.",
);

export const insideBrackets = fault(
  "bad-brackets",
  "What stands between these brackets cannot be read",
  "Put one comma between two entries, as in [breaking, pooling] or {top: 6, bottom: 5}.",
);

export const badBlockText = fault(
  "bad-block-text",
  "Nothing may follow “|” or “>” on its line",
  "Begin the text on the next line, indented.",
);

export const twoColons = fault(
  "two-colons",
  "A second colon with a space after it stands on this line, where one field is expected",
  "Put the value in quotes if the colon is part of the text; otherwise begin a new line.",
);

export const badIndent = fault(
  "bad-indent",
  "This line does not stand under those it belongs to",
  "Begin all fields of one record, and all entries of one list, in the same column.",
);

/** A line with no colon, where a field would have one. */
export function noColon(line: string): Fault {
  const words = /^[\s-]*(?<name>\S+)\s+(?<value>\S.*)$/u.exec(line)?.groups;
  const field = words
    ? `If “${words.name}” is a field, write “${words.name}: ${words.value}”.`
    : "Write a field as “name: value”.";
  return {
    code: "no-colon",
    message: "There is no colon in this line, so no field is seen here",
    hint: /^\S/u.test(line)
      ? `${field} Notes belong beneath the second line “---”.`
      : `${field} If it belongs to the value above it, put all of that in quotes.`,
  };
}

export function noComma(name: string): Fault {
  return fault(
    "no-comma",
    `Two fields stand here between brackets without a comma, so “${name}” is read as part of the value before it`,
    `Put a comma before “${name}”, as in {glaze: soot, coats: 2}.`,
  );
}

export const twoCommas = fault(
  "two-commas",
  "Two commas follow each other here, with nothing between them",
  "Take one of them away.",
);

export function badSpace(space: string): Fault {
  const code = (space.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0");
  return fault(
    "odd-space",
    `This space (U+${code}) is no plain one: it came with copied text, or from a phone, and is not read as a space`,
    "Delete it and type a space with the space bar.",
  );
}

export const fullWidthColon = fault(
  "full-width-colon",
  "This colon is not the one of YAML, so no field is seen here",
  "Write a plain “:” with a space after it, as in “name: Tidewrack”.",
);

export function duplicateField(key: string): Fault {
  return fault("duplicate-field", `“${key}” stands here a second time`, "Keep one of the two.");
}

export const tooManyAliases = fault(
  "too-many-aliases",
  `Values are repeated here by “*”, more than the ${counted(mostRepeated)} that are read`,
  "Write the values out where they belong.",
);

export const tooManyValues = fault(
  "too-many-values",
  `The record holds more than the ${counted(mostValues)} values that are read`,
  "Write what belongs to several tiles or loads into a record for each.",
);

export function longList(length: number, most: number): Fault {
  return fault(
    "list-too-long",
    `There are ${counted(length)} entries here, and no more than ${counted(most)} are read`,
    "Check that nothing was pasted here twice; write the rest into a record of its own.",
  );
}

export function longValue(length: number): Fault {
  return fault(
    "value-too-long",
    `This value is ${counted(length)} letters long, and no more than ${counted(longestValue)} are read`,
    "Write long texts as notes, beneath the second line “---”.",
  );
}

export const longKey = fault(
  "key-too-long",
  `The name of this field is longer than the ${counted(longestKey)} letters that are read`,
  "Write each field as “name: value”.",
);

export function tooMany(what: string, most: number): Fault {
  return fault(
    "yaml-too-long",
    `The fields have more than the ${counted(most)} ${what} that are read`,
    "Write long texts as notes, beneath the second line “---”.",
  );
}

/** A number with a comma between its thousands. */
export function counted(number: number): string {
  return String(number).replace(/\B(?=(?:\d{3})+$)/gu, ",");
}

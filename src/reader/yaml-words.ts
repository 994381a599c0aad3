/** The faults of YAML in a potter's words. */
import type { Severity } from "../records/problem.ts";
import { longestKey, longestValue, mostRepeated, mostValues } from "../terms/limits.ts";
import type { Fault } from "./problem-of-file.ts";

/** A fault at an offset into the text; an error unless it says otherwise. */
export interface FaultAt extends Fault {
  readonly offset: number;
  readonly severity?: Severity;
}

export function unclosedQuote(mark: string): Fault {
  return {
    code: "unclosed-quote",
    message: `A quotation begins here with ${mark} and never ends`,
    hint: `Put another ${mark} after the last word, or take this one away.`,
  };
}

export function unclosedBracket(mark: string): Fault {
  return {
    code: "unclosed-bracket",
    message: `A bracket “${mark}” opens here and is never closed`,
    hint: `Put “${mark === "[" ? "]" : "}"}” after the last entry.`,
  };
}

export const tab: Fault = {
  code: "tab-as-indent",
  message: "Here stands a tab, and a line may begin with spaces only",
  hint: "Replace the tab by two spaces.",
};

export const severalDocuments: Fault = {
  code: "several-documents",
  message: "A second document begins here, and a file holds one record",
  hint: "Take the line out, or give the second record a file of its own.",
};

export function badBeginning(mark: string): Fault {
  return {
    code: "bad-beginning",
    message: `A value that begins with “${mark}” means something special in YAML`,
    hint: `Put the whole value in quotes, as in "${mark}…".`,
  };
}

export const badBackslash: Fault = {
  code: "bad-backslash",
  message: "A backslash between double quotes means something special in YAML",
  hint: "Use single quotes for this value, or write the backslash twice.",
};

export const tooDeep: Fault = {
  code: "nested-too-deep",
  message: "Lists and maps lie too deep in each other here",
  hint: "Write the record as the reference page shows; no field goes this deep.",
};

export const bracketedName: Fault = {
  code: "bracketed-name",
  message: "A bracket begins a list or a map here, where a field's name belongs",
  hint: "Put the value in quotes if the bracket is part of the text.",
};

export const noSpaceAfterColon: Fault = {
  code: "no-space-after-colon",
  message: "There is no space after the colon, so no field is seen here",
  hint: "Write a space between the colon and the value, as in “name: Tidewrack”.",
};

export const textAfterQuote: Fault = {
  code: "text-after-quote",
  message: "There is text after the closing quote",
  hint: "Put the whole value into one pair of quotes; an apostrophe inside needs double quotes around it.",
};

export const listOnKeyLine: Fault = {
  code: "list-on-key-line",
  message: "A list begins on the line of its field's name",
  hint: "Begin the list on the next line, indented, each entry with “- ”.",
};

export const insideBrackets: Fault = {
  code: "bad-brackets",
  message: "What stands between these brackets cannot be read",
  hint: "Put one comma between two entries, as in [breaking, pooling] or {top: 6, bottom: 5}.",
};

export const badBlockText: Fault = {
  code: "bad-block-text",
  message: "Nothing may follow “|” or “>” on its line",
  hint: "Begin the text on the next line, indented.",
};

export const twoColons: Fault = {
  code: "two-colons",
  message: "A second colon with a space after it stands on this line, where one field is expected",
  hint: "Put the value in quotes if the colon is part of the text; otherwise begin a new line.",
};

export const badIndent: Fault = {
  code: "bad-indent",
  message: "This line does not stand under those it belongs to",
  hint: "Begin all fields of one record, and all entries of one list, in the same column.",
};

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
  return {
    code: "no-comma",
    message: `Two fields stand here between brackets without a comma, so “${name}” is read as part of the value before it`,
    hint: `Put a comma before “${name}”, as in {glaze: soot, coats: 2}.`,
  };
}

export const twoCommas: Fault = {
  code: "two-commas",
  message: "Two commas follow each other here, with nothing between them",
  hint: "Take one of them away.",
};

export function badSpace(space: string): Fault {
  const code = (space.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0");
  return {
    code: "odd-space",
    message: `This space (U+${code}) is no plain one: it came with copied text, or from a phone, and is not read as a space`,
    hint: "Delete it and type a space with the space bar.",
  };
}

export const fullWidthColon: Fault = {
  code: "full-width-colon",
  message: "This colon is not the one of YAML, so no field is seen here",
  hint: "Write a plain “:” with a space after it, as in “name: Tidewrack”.",
};

export function duplicateField(key: string): Fault {
  return {
    code: "duplicate-field",
    message: `“${key}” stands here a second time`,
    hint: "Keep one of the two.",
  };
}

export const tooManyAliases: Fault = {
  code: "too-many-aliases",
  message: `Values are repeated here by “*”, more than the ${counted(mostRepeated)} that are read`,
  hint: "Write the values out where they belong.",
};

export const tooManyValues: Fault = {
  code: "too-many-values",
  message: `The record holds more than the ${counted(mostValues)} values that are read`,
  hint: "Write what belongs to several tiles or loads into a record for each.",
};

export function longList(length: number, most: number): Fault {
  return {
    code: "list-too-long",
    message: `There are ${counted(length)} entries here, and no more than ${counted(most)} are read`,
    hint: "Check that nothing was pasted here twice; write the rest into a record of its own.",
  };
}

export function longValue(length: number): Fault {
  return {
    code: "value-too-long",
    message: `This value is ${counted(length)} letters long, and no more than ${counted(longestValue)} are read`,
    hint: "Write long texts as notes, beneath the second line “---”.",
  };
}

export const longKey: Fault = {
  code: "key-too-long",
  message: `The name of this field is longer than the ${counted(longestKey)} letters that are read`,
  hint: "Write each field as “name: value”.",
};

export function tooMany(what: string, most: number): Fault {
  return {
    code: "yaml-too-long",
    message: `The fields have more than the ${counted(most)} ${what} that are read`,
    hint: "Write long texts as notes, beneath the second line “---”.",
  };
}

/** A number with a comma between its thousands. */
export function counted(number: number): string {
  return String(number).replace(/\B(?=(?:\d{3})+$)/gu, ",");
}

/** The faults of YAML in a potter's words. */
import type { Fault } from "./problem-of-file.ts";

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
  message: "This line is indented with a tab, and YAML reads only spaces",
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

export const unreadable: Fault = {
  code: "unreadable-yaml",
  message: "This line cannot be read as YAML",
  hint: "Look for a missing quote, bracket or comma on this line and the one above.",
};

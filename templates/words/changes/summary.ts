/** The summary of a request as a reader meets it: plain words in their places, for whoever renders them. */

/** Words, and among them what is to be set apart: a file's name, what matters most. */
export type Piece = string | { readonly code: string } | { readonly strong: string };

/** One line or paragraph. */
export type Line = readonly Piece[];

export type Block =
  | { readonly is: "paragraph"; readonly line: Line }
  | { readonly is: "list"; readonly numbered: boolean; readonly items: readonly Line[] }
  | { readonly is: "table"; readonly head: readonly string[]; readonly rows: readonly Row[] }
  /** What is there in full, behind words of ours in one line: it was known before. */
  | { readonly is: "folded"; readonly words: string; readonly blocks: readonly Block[] }
  /** Somebody's own words. */
  | { readonly is: "quotation"; readonly words: string }
  /** A photograph of the archive, its file relative to it; one that browsers do not show is led to. */
  | {
      readonly is: "picture";
      readonly file: string;
      readonly alt: string;
      readonly isShown: boolean;
    };

type Row = readonly string[];

/** One record, or one thing to know. */
export interface Item {
  /** What it is called where there is no room for it. */
  readonly name: string;
  /** Null for what needs no heading of its own. */
  readonly heading: string | null;
  readonly blocks: readonly Block[];
  /** What may never be left out of it. */
  readonly least: readonly Block[];
}

export interface Section {
  readonly heading: string | null;
  readonly items: readonly Item[];
}

export interface Summary {
  readonly title: string;
  /** The loudest first. */
  readonly sections: readonly Section[];
  readonly foot: string;
}

export function paragraph(...line: Line): Block {
  return { is: "paragraph", line };
}

/** A list; nothing where it would be empty. */
export function list(items: readonly Line[], numbered = false): readonly Block[] {
  return items.length === 0 ? [] : [{ is: "list", numbered, items }];
}

/** So many lines of one kind are told; of more, how many there are. */
const mostLines = 25;

/**
 * A list that may be long: its first lines, and how many more there are.
 *
 * @param tellsThem what tells the others: `the check tells them`
 */
export function shortList(items: readonly Line[], tellsThem: string): readonly Block[] {
  const more = items.length - mostLines;
  if (more < 2) return list(items);
  return [...list(items.slice(0, mostLines)), paragraph(`And ${more} more; ${tellsThem}.`)];
}

export const code = (text: string): Piece => ({ code: text });
export const strong = (text: string): Piece => ({ strong: text });

/** A sentence with its full stop, or as it is where it has an end. */
export function sentence(words: string): string {
  return /[.!?]["”)]?$/u.test(words) ? words : `${words}.`;
}

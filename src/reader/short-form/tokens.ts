/** The words of a line in short form, each with its place. */

/** A part of the line, as offsets in it. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

export interface Token extends Span {
  /** As it is typed, but for the quotes around it. */
  readonly text: string;
  /** It stood between quotes: own words, or a name with spaces. */
  readonly isQuoted: boolean;
  readonly isAfterComma: boolean;
}

/** What is between two semicolons, or on a line of its own: one thing that was done. */
export type Piece = readonly Token[];

/**
 * What a piece is made of: own words between quotes (a quote in them is typed twice), and words. A comma
 * parts words, but not the digits of a number. A quote that is never closed is a word.
 */
const parts =
  /"(?<own>(?:[^"\n]|"")*)"|(?<end>[;\n\r])|(?<comma>,(?!\d)|(?<!\d),)|(?<word>(?:[^\s;,"]|(?<=\d),(?=\d))+|")/gu;

/** Cuts a line into pieces; those that are empty are left out. */
export function readPieces(line: string): readonly Piece[] {
  const pieces: Token[][] = [[]];
  let isAfterComma = false;
  for (const { index, 0: all, groups = {} } of line.matchAll(parts)) {
    const { own, end, comma, word } = groups;
    const text = word ?? own?.replaceAll('""', '"');
    if (text !== undefined) {
      const isQuoted = own !== undefined;
      pieces.at(-1)?.push({ text, from: index, to: index + all.length, isQuoted, isAfterComma });
    }
    if (end !== undefined) pieces.push([]);
    isAfterComma = comma !== undefined;
  }
  return pieces.filter((piece) => piece.length > 0);
}

/** Lines and columns of offsets into a text, found without reading the text again for each. */

/** Line and column, both from 1; columns in UTF-16 units, as editors count. */
export interface Position {
  readonly line: number;
  readonly column: number;
}

/** Makes the function that tells where an offset into a text lies. */
export function indexLines(text: string): (offset: number) => Position {
  const starts = [0];
  for (let at = text.indexOf("\n"); at >= 0; at = text.indexOf("\n", at + 1)) starts.push(at + 1);
  return (offset) => {
    const line = countUpTo(starts, offset);
    return { line, column: offset - (starts[line - 1] ?? 0) + 1 };
  };
}

/** How many of some ascending numbers are no greater than a number: by halving. */
function countUpTo(ascending: readonly number[], number: number): number {
  let [low, high] = [0, ascending.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((ascending[middle] ?? 0) <= number) low = middle + 1;
    else high = middle;
  }
  return Math.max(low, 1);
}

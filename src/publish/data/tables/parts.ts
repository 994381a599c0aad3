/** What a row of the JSON files has a list of, as rows of their own. */

/** One of the things that a row has several of. */
export interface Part<Row, Thing> {
  readonly of: Row;
  /** From 1, in the order of the list. */
  readonly number: number;
  readonly part: Thing;
}

/** Everything that is in a list of each row, with its number. */
export function* numbered<Row, Thing>(
  rows: Iterable<Row>,
  listOf: (row: Row) => readonly Thing[],
): Generator<Part<Row, Thing>> {
  for (const of of rows) {
    let number = 0;
    for (const part of listOf(of)) {
      number += 1;
      yield { of, number, part };
    }
  }
}

/** Every word that is in a list of each row, once: to say it twice says no more. */
export function listed<Row>(
  rows: Iterable<Row>,
  listOf: (row: Row) => readonly string[],
): Generator<Part<Row, string>> {
  return numbered(rows, (row) => [...new Set(listOf(row))]);
}

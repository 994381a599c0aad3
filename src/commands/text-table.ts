/** A table for a terminal and for paper: columns aligned by spaces. */

/** The first column is words, set to the left; the others are figures, set to the right. */
export function renderTable(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const all = [head, ...rows];
  const widths = head.map((_, column) => Math.max(...all.map((row) => widthOf(row[column] ?? ""))));
  return all
    .map((row) =>
      row
        .map((cell, column) => pad(cell, widths[column] ?? 0, column === 0))
        .join("  ")
        .trimEnd(),
    )
    .join("\n");
}

/**
 * A weight or a volume for a column: two decimals below 10, one from there on, the points of both
 * beneath each other; a dash for nothing.
 */
export function inColumn(amount: number): string {
  if (amount === 0) return "–";
  return amount < 10 ? amount.toFixed(2) : `${amount.toFixed(1)} `;
}

function pad(cell: string, width: number, toTheLeft: boolean): string {
  const space = " ".repeat(width - widthOf(cell));
  return toTheLeft ? cell + space : space + cell;
}

function widthOf(cell: string): number {
  return [...cell].length;
}

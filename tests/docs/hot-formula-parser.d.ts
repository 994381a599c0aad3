/** What is used of hot-formula-parser 4.0.0, which carries no types. */
declare module "hot-formula-parser" {
  interface Place {
    readonly row: { readonly index: number };
    readonly column: { readonly index: number };
  }

  export class Parser {
    on(event: "callCellValue", give: (cell: Place, done: (value: unknown) => void) => void): void;
    on(
      event: "callRangeValue",
      give: (from: Place, to: Place, done: (rows: readonly unknown[][]) => void) => void,
    ): void;
    /** A formula without its `=`. */
    parse(formula: string): { readonly error: string | null; readonly result: unknown };
  }
}

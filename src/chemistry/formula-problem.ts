/** What is wrong with a formula, for the potter who typed it. */
export interface FormulaProblem {
  /** The rule that was broken, in kebab-case. */
  readonly code: FormulaFault;
  /** The character at which it shows, from 1. */
  readonly position: number;
  readonly message: string;
  /** How to put it right. */
  readonly hint: string;
}

export type FormulaFault =
  | "bracket-not-closed"
  | "bracket-not-opened"
  | "count-out-of-range"
  | "element-without-oxide"
  | "empty-formula"
  | "formula-too-long"
  | "nothing-between-dots"
  | "number-out-of-place"
  | "point-between-groups"
  | "space-between-groups"
  | "stray-character"
  | "unknown-element";

/** A fault at a character counted from 0, as the reader of the text counts. */
export function formulaProblem(
  code: FormulaFault,
  index: number,
  message: string,
  hint: string,
): FormulaProblem {
  return { code, position: index + 1, message, hint };
}

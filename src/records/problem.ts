/**
 * What is wrong with a record. A problem names a record and a field; only reporting joins it to
 * a line of a file.
 */
import type { Mend } from "./mend.ts";

/** A step into a record: a field's name or a list's index, as they stand in the YAML. */
export type FieldPath = readonly (string | number)[];

/** Whether a path leads to a field or to something in it. */
export function isFieldPathWithin(path: FieldPath, field: FieldPath): boolean {
  return field.every((step, i) => path[i] === step);
}

/** Where a problem lies: a record's file, relative to the archive, and a field in it. */
export interface Place {
  readonly file: string;
  readonly path: FieldPath;
  /** True where the field's name is what is wrong, not its value. */
  readonly atKey?: boolean;
}

export type Severity = "error" | "warning";

export interface Problem extends Place {
  readonly severity: Severity;
  /** The rule that was broken, in kebab-case: `unknown-glaze`. */
  readonly code: string;
  /** What was found and what was expected, one sentence or two. */
  readonly message: string;
  /** How to put it right. */
  readonly hint: string;
  /** Where the fault has a line of its own that no field leads to (broken YAML, from 1). */
  readonly at?: { readonly line: number; readonly column: number };
  /** What puts it right without a guess, where anything does. */
  readonly mend?: Mend;
  /** The word that is wrong, in the field's text or, where no field is named, in the notes. */
  readonly word?: WordPlace;
}

/** A word of a text. */
export interface WordPlace {
  readonly text: string;
  /** How many times the same word stands there before it. */
  readonly nth: number;
}

/** A fault of one field, before it is known which record it belongs to. */
export interface FieldFault {
  readonly path: FieldPath;
  readonly atKey?: boolean;
  readonly code: string;
  readonly message: string;
  readonly hint: string;
}

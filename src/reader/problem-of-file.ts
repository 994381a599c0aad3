/** Problems that the reading of an archive finds. */
import type { FieldFault, FieldPath, Problem, Severity } from "../records/problem.ts";

/** What is wrong and how to put it right. */
export interface Fault {
  readonly code: string;
  readonly message: string;
  readonly hint: string;
}

/** A fault at a place of a text, before it is known which file it belongs to. */
export interface TextFault extends Fault {
  readonly severity: Severity;
  /** From 1. */
  readonly line: number;
  /** From 1, in UTF-16 units as editors count. */
  readonly column: number;
}

/** A problem of a file as a whole, or of one of its fields. */
export function problemOfFile(
  file: string,
  fault: Fault,
  path: FieldPath = [],
  severity: Severity = "error",
): Problem {
  return { file, path, severity, ...fault };
}

/** A problem of a field's name. */
export function problemOfKey(file: string, fault: Fault, path: FieldPath): Problem {
  return { ...problemOfFile(file, fault, path), atKey: true };
}

/** A problem at a place of a file's text. */
export function problemOfText(file: string, fault: TextFault): Problem {
  const { line, column, severity, code, message, hint } = fault;
  return { file, path: [], severity, code, message, hint, at: { line, column } };
}

/** A problem that a schema found in a record. */
export function problemOfField(file: string, fault: FieldFault): Problem {
  return { ...fault, file, severity: "error" };
}

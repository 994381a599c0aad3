/** What is to be minded about a tile in a load, or about the load as a whole. */
import type { Problem } from "../records/problem.ts";

export interface Caution {
  /** The code of the check that found it, or one of the load's own. */
  readonly code: string;
  /** An error stops the build: what may melt, above all. What nobody knows is no error, and is told. */
  readonly severity: Problem["severity"];
  readonly message: string;
  readonly hint: string;
}

export function warning(code: string, message: string, hint: string): Caution {
  return { code, severity: "warning", message, hint };
}

/** A problem of the build as it is told beside a tile. */
export function fromProblem({ code, severity, message, hint }: Problem): Caution {
  return { code, severity, message, hint };
}

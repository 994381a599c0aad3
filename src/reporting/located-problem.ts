/** Problems in the order in which a reader goes through files. */
import type { LocatedProblem } from "../reader/locate.ts";
import { compareIds } from "../terms/ids.ts";

/** Sorts problems by file and line. What is said twice of one place is kept once. */
export function sortProblems(problems: readonly LocatedProblem[]): readonly LocatedProblem[] {
  const byWords = new Map<string, LocatedProblem>();
  for (const problem of problems) {
    const { file, line, column, code, message, takenBy } = problem;
    byWords.set(JSON.stringify([file, line, column, code, message, takenBy]), problem);
  }
  return [...byWords.values()].sort(inReadingOrder);
}

function inReadingOrder(a: LocatedProblem, b: LocatedProblem): number {
  return (
    compareIds(a.file, b.file) ||
    a.line - b.line ||
    a.column - b.column ||
    compareIds(a.code, b.code) ||
    compareIds(a.message, b.message) ||
    compareIds(a.takenBy ?? "", b.takenBy ?? "")
  );
}

/** What is wrong, and whose field it is where a tile takes it from its set. */
export function tellMessage({ message, takenBy }: LocatedProblem): string {
  return takenBy === null ? message : `${message} (${takenBy} takes this from here)`;
}

/** How many problems of each severity there are. */
export function countSeverities(problems: readonly LocatedProblem[]): {
  readonly errors: number;
  readonly warnings: number;
} {
  const errors = problems.filter(({ severity }) => severity === "error").length;
  return { errors, warnings: problems.length - errors };
}

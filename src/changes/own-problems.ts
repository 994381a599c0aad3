/** Which problems of an archive belong to a request: those of its files, and those that are new. */
import type { LocatedProblem } from "../reader/locate.ts";
import type { Problem } from "../records/problem.ts";

/** Tells whether a problem belongs to the request. */
export type IsOwn = (problem: LocatedProblem) => boolean;

/**
 * A problem belongs to a request where it is in a file that the request changes, or where the
 * archive did not have it before: a tile that names a glaze which is gone now, say.
 *
 * @param before what was wrong with the archive before the request
 * @param changed the files that the request changes, relative to the archive
 * @param problems all that is wrong now
 */
export function ownProblems(
  before: readonly Problem[],
  changed: ReadonlySet<string>,
  problems: readonly LocatedProblem[],
): IsOwn {
  const left = countAlike(before);
  const own = new Set<string>();
  for (const problem of problems) {
    const files = [problem.file, problem.takenBy].filter((file) => file !== null);
    const known = identify(asFound(problem));
    const there = left.get(known) ?? 0;
    left.set(known, there - 1);
    if (there <= 0 || files.some((file) => changed.has(file))) own.add(placed(problem));
  }
  return (problem) => own.has(placed(problem));
}

function countAlike(problems: readonly Problem[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const problem of problems) {
    const known = identify(problem);
    counts.set(known, (counts.get(known) ?? 0) + 1);
  }
  return counts;
}

/** Of whichever file it was found; a line may have moved. */
function asFound({ file, takenBy, ...rest }: LocatedProblem): Problem {
  return { ...rest, file: takenBy ?? file };
}

function identify({ file, code, message }: Problem): string {
  return JSON.stringify([file, code, message]);
}

function placed({ file, takenBy, line, column, code, message }: LocatedProblem): string {
  return JSON.stringify([file, takenBy, line, column, code, message]);
}

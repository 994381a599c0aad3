/** Problems as whoever made a request wants them: her own first, and what was there before in short. */
import type { LocatedProblem } from "../reader/locate.ts";

/** How the problems of a request are told apart from those that were there before. */
export interface RequestView {
  /** Whether a problem is in a file that the request changes, or was not there before it. */
  readonly isOwn: (problem: LocatedProblem) => boolean;
  /** The command that tells all problems. */
  readonly seeAll: string;
}

/** What is told in full, in its order, and the rest in a sentence. */
export interface Shown {
  readonly problems: readonly LocatedProblem[];
  /** Null where nothing is left. */
  readonly folded: string | null;
}

/** The request's own first, then errors of other files; warnings that were there before are counted. */
export function showRequest(
  problems: readonly LocatedProblem[],
  { isOwn, seeAll }: RequestView,
): Shown {
  const before = problems.filter((problem) => !isOwn(problem));
  const errors = before.filter(({ severity }) => severity === "error").map(saidToBeOlder);
  const warnings = before.length - errors.length;
  return {
    problems: [...problems.filter(isOwn), ...errors],
    folded: warnings === 0 ? null : wereThere(warnings, seeAll),
  };
}

function wereThere(warnings: number, seeAll: string): string {
  return warnings === 1
    ? `1 warning was there before this request, in a file that it does not change. “${seeAll}” tells it.`
    : `${warnings} warnings were there before this request, in files that it does not change. “${seeAll}” tells them.`;
}

/** Whoever made the request need not look for what she did wrong. */
function saidToBeOlder(problem: LocatedProblem): LocatedProblem {
  return { ...problem, hint: `${problem.hint} (It was wrong before this request.)` };
}

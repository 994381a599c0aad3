/** Problems as another program reads them. */
import type { LocatedProblem } from "../reader/locate.ts";
import type { RecordCounts } from "../reader/read-archive-files.ts";
import { countSeverities, tellMessage } from "./located-problem.ts";

/**
 * Renders `{"problems": […], "counts": {…}}`: nothing but JSON, and nothing in it that a terminal
 * would obey. Files are relative to the archive, lines and columns count from 1.
 *
 * @param isOwn whether a request changed it: where one is looked at, every problem says so as `changed`
 */
export function renderJson(
  problems: readonly LocatedProblem[],
  counts: RecordCounts,
  isOwn?: (problem: LocatedProblem) => boolean,
): string {
  const report = {
    problems: problems.map((problem) => {
      const { severity, code, file, line, column, hint } = problem;
      const changed = isOwn && { changed: isOwn(problem) };
      return {
        severity,
        code,
        file,
        line,
        column,
        message: tellMessage(problem),
        hint,
        ...changed,
      };
    }),
    counts: { ...counts, ...countSeverities(problems) },
  };
  return writeJson(report);
}

/** JSON with nothing in it that a terminal would obey: of itself it escapes only the first 32 control characters. */
export function writeJson(value: unknown): string {
  return JSON.stringify(value, null, 2).replace(
    /[\x7f-\x9f\u200e\u200f\u2028-\u202e\u2066-\u2069\ufeff]/gu,
    (found) => `\\u${found.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );
}

/** Problems as another program reads them. */
import type { LocatedProblem } from "../reader/locate.ts";
import type { RecordCounts } from "../reader/read-archive-files.ts";
import { countSeverities, tellMessage } from "./located-problem.ts";

/**
 * Renders `{"problems": […], "counts": {…}}`: nothing but JSON, and nothing in it that a terminal
 * would obey. Files are relative to the archive, lines and columns count from 1.
 */
export function renderJson(problems: readonly LocatedProblem[], counts: RecordCounts): string {
  const report = {
    problems: problems.map((problem) => {
      const { severity, code, file, line, column, hint } = problem;
      return { severity, code, file, line, column, message: tellMessage(problem), hint };
    }),
    counts: { ...counts, ...countSeverities(problems) },
  };
  return escapeUnseen(JSON.stringify(report, null, 2));
}

/** JSON escapes only the first 32 control characters by itself. */
function escapeUnseen(json: string): string {
  return json.replace(
    /[\x7f-\x9f\u200e\u200f\u2028-\u202e\u2066-\u2069\ufeff]/gu,
    (found) => `\\u${found.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );
}

/**
 * Problems as GitLab's Code Quality report, which a merge request shows beside the changed lines:
 * https://docs.gitlab.com/ci/testing/code_quality/#code-quality-report-format
 */
import { createHash } from "node:crypto";
import type { LocatedProblem } from "../reader/locate.ts";
import { tellMessage } from "./located-problem.ts";
import { writeJson } from "./render-json.ts";
import { makeLine, makeVisible } from "./visible.ts";

/** The forge knows info, minor, major, critical and blocker. Nothing is published while there is an error. */
const severities = { error: "blocker", warning: "minor" } as const;

/**
 * Renders all problems, those too that were there before a request: the forge compares the report
 * with that of the branch it goes to, by the fingerprints.
 *
 * @param folder the archive's folder relative to the repository, with `/`; empty for its root
 */
export function renderGitlab(problems: readonly LocatedProblem[], folder: string): string {
  const seen = new Map<string, number>();
  return writeJson(
    problems.map((problem) => {
      const what = identify(problem);
      const nth = seen.get(what) ?? 0;
      seen.set(what, nth + 1);
      const { severity, code, file, line, hint } = problem;
      return {
        description: `${makeLine(tellMessage(problem), 1000)} ${makeLine(hint)}`,
        check_name: code,
        fingerprint: sum(`${what} ${nth}`),
        severity: severities[severity],
        location: {
          path: makeVisible(folder === "" ? file : `${folder}/${file}`),
          lines: { begin: line },
        },
      };
    }),
  );
}

/** What stays the same when lines are written above it. */
function identify({ file, takenBy, path, code, message }: LocatedProblem): string {
  return JSON.stringify([file, takenBy, path, code, message]);
}

function sum(text: string): string {
  return createHash("sha256").update(text).digest("hex");
}

/** What a command says of the problems it found. */
import type { LocatedProblem } from "../reader/locate.ts";
import type { RecordCounts } from "../reader/read-archive-files.ts";
import { sortProblems } from "./located-problem.ts";
import { renderGithub } from "./render-github.ts";
import { renderGitlab } from "./render-gitlab.ts";
import { renderJson } from "./render-json.ts";
import { renderText } from "./render-text.ts";
import { type RequestView, showRequest } from "./request-view.ts";

/** Text for people, JSON for programs, annotations for a GitHub workflow, a Code Quality report for GitLab. */
export type ReportFormat = "text" | "json" | "github" | "gitlab";

export interface ReportSettings {
  /** Whether the text is for a terminal that shows colours. */
  readonly colour?: boolean;
  /** The archive's folder relative to the repository, with `/`, for forges; empty for its root. */
  readonly folder?: string;
  /** The command that tells every place of a fault by itself; with it, a text tells like faults once. */
  readonly listAll?: string | undefined;
  /** Which of them are a request's own; without it, all are told alike. */
  readonly request?: RequestView | undefined;
}

/** Renders problems, sorted by file and line, in one of the formats; without a last newline. */
export function reportAs(
  format: ReportFormat,
  problems: readonly LocatedProblem[],
  counts: RecordCounts,
  { colour = false, folder = "", listAll, request }: ReportSettings = {},
): string {
  const sorted = sortProblems(problems);
  const shown = request ? showRequest(sorted, request) : { problems: sorted, folded: null };
  switch (format) {
    case "text":
      return renderText(sorted, counts, { colour, listAll, shown });
    case "json":
      return renderJson(sorted, counts, request?.isOwn);
    case "github":
      return renderGithub(sorted, counts, { shown, folder });
    case "gitlab":
      return renderGitlab(sorted, folder);
  }
}

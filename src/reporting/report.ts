/** What a command says of the problems it found. */
import type { LocatedProblem } from "../reader/locate.ts";
import type { RecordCounts } from "../reader/read-archive-files.ts";
import { sortProblems } from "./located-problem.ts";
import { renderGithub } from "./render-github.ts";
import { renderJson } from "./render-json.ts";
import { renderText } from "./render-text.ts";

/** Text for people, JSON for programs, annotations for a GitHub workflow. */
export type ReportFormat = "text" | "json" | "github";

export interface ReportSettings {
  /** Whether the text is for a terminal that shows colours. */
  readonly colour?: boolean;
  /** The archive's folder relative to the repository, with `/`, for annotations; empty for its root. */
  readonly folder?: string;
  /** The command that tells every place of a fault by itself; with it, a text tells like faults once. */
  readonly listAll?: string | undefined;
}

/** Renders problems, sorted by file and line, in one of the formats; without a last newline. */
export function reportAs(
  format: ReportFormat,
  problems: readonly LocatedProblem[],
  counts: RecordCounts,
  { colour = false, folder = "", listAll }: ReportSettings = {},
): string {
  const sorted = sortProblems(problems);
  switch (format) {
    case "text":
      return renderText(sorted, counts, { colour, listAll });
    case "json":
      return renderJson(sorted, counts);
    case "github":
      return renderGithub(sorted, counts, { folder });
  }
}

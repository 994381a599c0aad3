/** Prints what was found, in the form that was asked for. */
import { relative } from "node:path";
import type { LocatedProblem } from "../archive/locate.ts";
import type { RecordCounts } from "../archive/read-archive.ts";
import { sortProblems } from "../reporting/located-problem.ts";
import { renderGithub } from "../reporting/render-github.ts";
import { renderJson } from "../reporting/render-json.ts";
import { renderText } from "../reporting/render-text.ts";

export const reportFormats = ["text", "json", "github"] as const;
export type ReportFormat = (typeof reportFormats)[number];

/** Prints problems to standard output. */
export function printReport(
  format: ReportFormat,
  found: readonly LocatedProblem[],
  counts: RecordCounts,
  archive: string,
): void {
  const problems = sortProblems(found);
  console.log(render(format, problems, counts, archive));
}

function render(
  format: ReportFormat,
  problems: readonly LocatedProblem[],
  counts: RecordCounts,
  archive: string,
): string {
  switch (format) {
    case "json":
      return renderJson(problems, counts);
    case "github":
      return renderGithub(problems, counts, {
        folder: relative(process.cwd(), archive).replaceAll("\\", "/"),
      });
    case "text":
      return renderText(problems, counts, { colour: showsColour() });
  }
}

/** Colour where there is a terminal that did not ask to be spared: https://no-color.org. */
function showsColour(): boolean {
  return process.stdout.isTTY === true && !process.env.NO_COLOR;
}

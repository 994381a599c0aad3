/** Prints what was found, in the form that was asked for. */
import { relative } from "node:path";
import type { LocatedProblem } from "../reader/locate.ts";
import type { RecordCounts } from "../reader/read-archive-files.ts";
import { type ReportFormat, reportAs } from "../reporting/report.ts";

/** Prints problems of an archive's folder to standard output. */
export function printReport(
  format: ReportFormat,
  problems: readonly LocatedProblem[],
  counts: RecordCounts,
  archive: string,
): void {
  const folder = relative(process.cwd(), archive).replaceAll("\\", "/");
  console.log(reportAs(format, problems, counts, { colour: showsColour(), folder }));
}

/** Colour where there is a terminal that did not ask to be spared: https://no-color.org. */
function showsColour(): boolean {
  return process.stdout.isTTY === true && !process.env.NO_COLOR;
}

/** Prints what was found, in the form that was asked for. */
import { relative } from "node:path";
import type { LocatedProblem } from "../reader/locate.ts";
import type { RecordCounts } from "../reader/read-archive-files.ts";
import { type ReportFormat, reportAs } from "../reporting/report.ts";
import { asTypedFor } from "./as-typed.ts";

/**
 * Prints problems of an archive's folder to standard output.
 *
 * @param all whether a text tells every place of a fault that many files share
 */
export function printReport(
  format: ReportFormat,
  problems: readonly LocatedProblem[],
  counts: RecordCounts,
  archive: string,
  all = false,
): void {
  const folder = relative(process.cwd(), archive).replaceAll("\\", "/");
  const listAll = all ? undefined : asTypedFor(archive)("check --all");
  console.log(reportAs(format, problems, counts, { colour: showsColour(), folder, listAll }));
}

/** Colour where there is a terminal that did not ask to be spared: https://no-color.org. */
function showsColour(): boolean {
  return process.stdout.isTTY === true && !process.env.NO_COLOR;
}

/** Prints what was found, in the form that was asked for. */
import { relative } from "node:path";
import type { LocatedProblem } from "../reader/locate.ts";
import type { RecordCounts } from "../reader/read-archive-files.ts";
import { type ReportFormat, reportAs } from "../reporting/report.ts";
import { asTypedFor } from "./as-typed.ts";

interface Told {
  readonly all?: boolean;
  readonly folder?: string | undefined;
  readonly isOwn?: ((problem: LocatedProblem) => boolean) | undefined;
}

/**
 * Prints problems of an archive's folder to standard output.
 *
 * @param told.all whether a text tells every place of a fault that many files share
 * @param told.folder the archive's folder in its repository, where that is known
 * @param told.isOwn which problems are a request's own, where one is looked at
 */
export function printReport(
  format: ReportFormat,
  problems: readonly LocatedProblem[],
  counts: RecordCounts,
  archive: string,
  { all = false, folder, isOwn }: Told = {},
): void {
  const asTyped = asTypedFor(archive);
  const settings = {
    colour: showsColour(),
    folder: folder ?? relative(process.cwd(), archive).replaceAll("\\", "/"),
    listAll: all ? undefined : asTyped("check --all"),
    request: isOwn && { isOwn, seeAll: asTyped("check") },
  };
  console.log(reportAs(format, problems, counts, settings));
}

/** Colour where there is a terminal that did not ask to be spared: https://no-color.org. */
function showsColour(): boolean {
  return process.stdout.isTTY === true && !process.env.NO_COLOR;
}

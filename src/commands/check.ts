/** `tilebook check`: every fault of the archive, for people, programs and forges. */
import { findLongWaiting } from "../checks/long-waiting.ts";
import type { ReportFormat } from "../reporting/report.ts";
import { examineArchive } from "./examine.ts";
import { exitCodes } from "./failure.ts";
import { cacheFolderOf } from "./folders.ts";
import { startProgress } from "./progress.ts";
import { printReport } from "./report.ts";

export interface CheckOptions {
  readonly archive: string;
  readonly cache?: string;
  readonly format: ReportFormat;
}

/** Checks an archive and prints what was found; 1 where there is an error. */
export async function check(options: CheckOptions): Promise<number> {
  const progress = startProgress(options.format !== "text" || process.stderr.isTTY !== true);
  const { read, problems } = await examineArchive(
    options.archive,
    cacheFolderOf(options),
    progress,
    "opened",
  );
  progress.finish();
  const waiting = read.archive ? findLongWaiting(read.archive, today()) : [];
  const located = [...problems, ...waiting].map((problem) => read.locate(problem));
  printReport(options.format, located, read.counts, options.archive);
  return located.some(({ severity }) => severity === "error") ? exitCodes.faulty : exitCodes.done;
}

function today(): string {
  return new Date().toISOString().slice(0, 10);
}

/** `tilebook check`: every fault of the archive, for people, programs and forges. */
import { findLongWaiting } from "../checks/long-waiting.ts";
import type { ReadArchive } from "../reader/read-archive-files.ts";
import type { ReportFormat } from "../reporting/report.ts";
import type { Ask } from "./ask.ts";
import { examineArchive } from "./examine.ts";
import { exitCodes } from "./failure.ts";
import { cacheFolderOf } from "./folders.ts";
import { type Faults, mendInRounds } from "./mend.ts";
import { startProgress } from "./progress.ts";
import { printReport } from "./report.ts";

export interface CheckOptions {
  readonly archive: string;
  readonly cache?: string;
  readonly format: ReportFormat;
  /** Tell every place of a fault that many files share. */
  readonly all: boolean;
  /** Mend what can be mended without a guess. */
  readonly fix: boolean;
  /** Mend it without asking. */
  readonly yes: boolean;
}

/**
 * Checks an archive, mends what is asked for, and prints what is wrong with it then.
 *
 * @param ask undefined where nobody sits at a terminal
 * @returns 1 where there is an error
 */
export async function check(options: CheckOptions, ask: Ask | undefined): Promise<number> {
  const find = () => findAll(options);
  const found = options.fix ? await mendInRounds(find, { ...options, ask }) : await find();
  const { read, problems } = found;
  printReport(options.format, problems.map(read.locate), read.counts, options.archive, options.all);
  return problems.some(({ severity }) => severity === "error") ? exitCodes.faulty : exitCodes.done;
}

interface Found extends Faults {
  readonly read: ReadArchive;
}

async function findAll(options: CheckOptions): Promise<Found> {
  const progress = startProgress(options.format !== "text" || process.stderr.isTTY !== true);
  const { read, problems } = await examineArchive(
    options.archive,
    cacheFolderOf(options),
    progress,
    "opened",
  );
  progress.finish();
  const waiting = read.archive ? findLongWaiting(read.archive, today()) : [];
  return { read, texts: read.texts, problems: [...problems, ...waiting] };
}

function today(): string {
  return new Date().toISOString().slice(0, 10);
}

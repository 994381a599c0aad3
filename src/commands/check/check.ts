/** `tilebook check`: every fault of the archive, for people, programs and forges. */
import { type IsOwn, ownProblems } from "../../changes/own-problems.ts";
import { findRepository } from "../../git/repository.ts";
import type { LocatedProblem } from "../../reader/locate.ts";
import type { ReadArchive } from "../../reader/read-archive-files.ts";
import type { ReportFormat } from "../../reporting/report.ts";
import type { Ask } from "../ask.ts";
import type { Examined } from "../examine/examine.ts";
import { examineBefore } from "../examine/examine-before.ts";
import { openRequest, type Request } from "../examine/request.ts";
import { exitCodes } from "../failure.ts";
import { cacheFolderOf } from "../folders.ts";
import { startProgress } from "../progress.ts";
import { printReport } from "../report.ts";
import { examineToCheck, today } from "./examine-to-check.ts";
import { type Faults, mendInRounds } from "./mend.ts";

export interface CheckOptions {
  readonly archive: string;
  readonly cache?: string;
  readonly format: ReportFormat;
  /** The branch, tag or commit that a request is compared with. */
  readonly since?: string | undefined;
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
  // What cannot be compared is said before anybody waits for the pictures.
  const asked = await openIfAsked(options);
  const found = options.fix ? await mendInRounds(find, { ...options, ask }) : await find();
  const { read, problems } = found;
  const { archive, format, all } = options;
  const located = problems.map(read.locate);
  const of = {
    all,
    folder: await folderFor(options),
    // What was mended meanwhile is a change too.
    isOwn: await findOwn(options.fix ? await openIfAsked(options) : asked, found, located, archive),
  };
  printReport(format, located, read.counts, archive, of);
  return problems.some(({ severity }) => severity === "error") ? exitCodes.faulty : exitCodes.done;
}

/** Forges name files from the root of the repository. */
async function folderFor({ archive, format }: CheckOptions): Promise<string | undefined> {
  if (format !== "github" && format !== "gitlab") return undefined;
  return (await findRepository(archive))?.prefix.replace(/\/$/u, "");
}

async function openIfAsked({ archive, since }: CheckOptions): Promise<Request | undefined> {
  return since === undefined ? undefined : await openRequest(archive, since);
}

async function findOwn(
  request: Request | undefined,
  found: Found,
  located: readonly LocatedProblem[],
  archive: string,
): Promise<IsOwn | undefined> {
  if (request === undefined) return undefined;
  const before = await examineBefore(request, archive, found, today());
  return ownProblems(before.problems, request.changed, located);
}

interface Found extends Faults, Pick<Examined, "pictures"> {
  readonly read: ReadArchive;
}

async function findAll(options: CheckOptions): Promise<Found> {
  const progress = startProgress(options.format !== "text" || process.stderr.isTTY !== true);
  const found = await examineToCheck(options.archive, cacheFolderOf(options), progress);
  return { ...found, texts: found.read.texts };
}

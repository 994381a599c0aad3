/** Reads the logs that firings name. */
import type { FiringLog } from "../records/archive.ts";
import type { Problem } from "../records/problem.ts";
import { findNearest } from "../records/suggest.ts";
import { idKey } from "../terms/ids.ts";
import { largestLog } from "../terms/limits.ts";
import type { ArchiveFiles } from "./archive-files.ts";
import { decodeLog } from "./decode-text.ts";
import { type FoundFiles, type OtherFile, unexpectedFile } from "./found-files.ts";
import type { ParsedText } from "./parsed-text.ts";
import { problemOfFile, problemOfText } from "./problem-of-file.ts";

export interface ReadLogs {
  /** By the firing's file. */
  readonly byFiring: ReadonlyMap<string, FiringLog>;
  readonly problems: readonly Problem[];
}

/**
 * Reads the log of every firing that names one, and finds the logs that no firing names. A
 * firing that is faulty elsewhere names its log all the same.
 */
export function readLogs(
  archive: ArchiveFiles,
  files: FoundFiles,
  parsed: ReadonlyMap<string, ParsedText>,
): ReadLogs {
  const byFiring = new Map<string, FiringLog>();
  const problems: Problem[] = [];
  const named = new Set<OtherFile>();
  for (const { kind, file } of files.records) {
    const written = kind === "firing" ? parsed.get(file)?.source?.log : undefined;
    // A path that leads elsewhere is a fault of the field, and reported as that.
    if (typeof written !== "string" || /[\\/]/u.test(written)) continue;
    const log = files.logs.find(({ name }) => idKey(name) === idKey(written.trim()));
    if (!log) {
      problems.push(missingLog(file, written, files.logs));
      continue;
    }
    named.add(log);
    const reading = decodeLog(archive.read(log.file, largestLog));
    if (reading.ok) byFiring.set(file, { file: log.file, text: reading.text });
    else problems.push(problemOfText(log.file, reading.fault));
  }
  return { byFiring, problems: [...problems, ...findUnused(files.logs, named)] };
}

function missingLog(file: string, log: string, beside: readonly OtherFile[]): Problem {
  const near = findNearest(
    log,
    beside.map(({ name }) => name),
  );
  return problemOfFile(
    file,
    {
      code: "missing-log",
      message: `There is no log “${log}” beside this record`,
      hint: near
        ? `Did you mean “${near}”?`
        : "Put the file into tiles/firings, or take the line out.",
    },
    ["log"],
  );
}

function findUnused(beside: readonly OtherFile[], named: ReadonlySet<OtherFile>): Problem[] {
  return beside
    .filter((other) => !named.has(other))
    .map(({ file, name }) =>
      /\.csv$/iu.test(name)
        ? problemOfFile(
            file,
            {
              code: "unused-log",
              message: `No firing names the log “${name}”`,
              hint: `Write “log: ${name}” into the record of its firing.`,
            },
            [],
            "warning",
          )
        : unexpectedFile(file, "Records (.md) and their logs (.csv) belong in the firings' folder"),
    );
}

/** How many codes all load lists and sets of an archive name together. */
import type { Filed } from "../records/archive.ts";
import type { FiringRecord } from "../records/firing.ts";
import type { Problem } from "../records/problem.ts";
import type { SetRecord } from "../records/set.ts";
import { mostCodesOfArchive } from "../terms/limits.ts";
import { problemOfFile } from "./problem-of-file.ts";

export interface BoundCodes {
  /** Files whose codes are too many, with all that were counted before them. */
  readonly refused: ReadonlySet<string>;
  readonly problems: readonly Problem[];
}

/** Counts the codes of records in their order, and refuses those that go beyond the limit. */
export function boundCodes(
  sets: ReadonlyMap<string, Filed<SetRecord>>,
  firings: ReadonlyMap<string, Filed<FiringRecord>>,
): BoundCodes {
  const named = [
    ...[...sets.values()].map(({ file, record }) => ({
      file,
      field: "codes",
      count: countOf(record.codes ?? []),
    })),
    ...[...firings.values()].map(({ file, record }) => ({
      file,
      field: "tiles",
      count: countOf(Object.values(record.tiles ?? {}).flat()),
    })),
  ];
  let sum = 0;
  const beyond = named.filter(({ count }) => {
    sum += count;
    return count > 0 && sum > mostCodesOfArchive;
  });
  return {
    refused: new Set(beyond.map(({ file }) => file)),
    problems: beyond.map(({ file, field }) => problemOfFile(file, tooMany, [field])),
  };
}

function countOf(ranges: readonly (readonly string[])[]): number {
  return ranges.reduce((sum, { length }) => sum + length, 0);
}

const tooMany = {
  code: "too-many-codes",
  message: `With this record, the archive names more than the ${mostCodesOfArchive / 1000},000 codes that are read of all load lists and sets together`,
  hint: "Check the ends of each range.",
};

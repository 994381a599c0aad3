/**
 * Reads a whole archive: files → text → sources → records → an archive whose references have
 * been followed. Whatever is wrong on the way is collected, and the rest goes on.
 */
import type { Archive } from "../records/archive.ts";
import type { Place, Problem } from "../records/problem.ts";
import { findFiles } from "./find-files.ts";
import { findIdProblems } from "./find-id-problems.ts";
import type { FoundFiles } from "./finds.ts";
import { folderCache } from "./folder-cache.ts";
import { followReferences } from "./follow-references.ts";
import { type LocatedProblem, makeLocator, makePlaceFinder } from "./locate.ts";
import { noCache, type ParseCache, type ParsedText } from "./parse-cache.ts";
import { parseText } from "./parse-text.ts";
import { problemOfFile, problemOfText } from "./problem-of-file.ts";
import { type ReadLogs, readLogs } from "./read-logs.ts";
import { type AllRecords, readRecords } from "./read-records.ts";
import { largestRecord, readText } from "./read-text.ts";

export interface ReadOptions {
  /** Ids of the materials that Tilebook knows without a record. */
  readonly builtInMaterials: Iterable<string>;
  /** The folder in which parsed files are remembered; nothing is where none is named. */
  readonly cacheDir?: string;
}

/** How many files of each kind there are, faulty ones included. */
export interface RecordCounts {
  readonly tiles: number;
  readonly sets: number;
  readonly firings: number;
  readonly glazes: number;
  readonly clays: number;
  readonly materials: number;
  readonly pictures: number;
}

export interface ReadArchive {
  /** Null where studio.yaml is missing or faulty. */
  readonly archive: Archive | null;
  readonly problems: readonly Problem[];
  readonly counts: RecordCounts;
  /** Every picture, a stray one too, relative to the archive. */
  readonly pictures: readonly string[];
  /** Joins a problem, these or one that a check found, to a line of a file. */
  readonly locate: (problem: Problem) => LocatedProblem;
  /** Finds the file in which a tile's field is written: its set's, the studio's or its own. */
  readonly placeOf: (place: Place) => Place;
  /** The file that tells of the studio, where there is one. */
  readonly studioFile: string | undefined;
  /** What every record's file held, by the file's name. */
  readonly texts: ReadonlyMap<string, string>;
}

/**
 * Reads an archive.
 *
 * @param dir the folder that holds studio.yaml
 * @throws MachineError where the disk or a permission fails
 */
export async function readArchive(dir: string, options: ReadOptions): Promise<ReadArchive> {
  const files = findFiles(dir);
  const texts = readTexts(dir, files);
  const cache = options.cacheDir === undefined ? noCache : folderCache(options.cacheDir);
  const parsed = parseAll(texts.byFile, files.studio, cache);
  cache.save();
  const records = readRecords(files, parsed);
  const logs = readLogs(dir, files, parsed);
  const followed = followReferences(records, {
    files,
    logs: logs.byFiring,
    builtInMaterials: options.builtInMaterials,
  });
  const { studio } = records;
  return {
    archive: studio && { studio, ...followed.archive },
    problems: [
      ...files.problems,
      ...texts.problems,
      ...findIdProblems(files, parsed),
      ...records.problems,
      ...logs.problems,
      ...followed.problems,
      ...findEmptiness(files),
    ],
    counts: countRecords(files, records),
    pictures: files.pictures.map(({ file }) => file),
    locate: makeLocator({ texts: new Map([...texts.shown, ...textsOf(logs)]), parsed, files }),
    placeOf: makePlaceFinder({ parsed, files }),
    studioFile: files.studio,
    texts: texts.shown,
  };
}

function textsOf({ byFiring }: ReadLogs): (readonly [string, string])[] {
  return [...byFiring.values()].map(({ file, text }) => [file, text]);
}

interface Texts {
  readonly byFile: ReadonlyMap<string, string>;
  /** What can be shown of every file, faulty ones included. */
  readonly shown: ReadonlyMap<string, string>;
  readonly problems: readonly Problem[];
}

function readTexts(dir: string, { studio, records }: FoundFiles): Texts {
  const byFile = new Map<string, string>();
  const shown = new Map<string, string>();
  const problems: Problem[] = [];
  for (const file of [...(studio === undefined ? [] : [studio]), ...records.map((r) => r.file)]) {
    const reading = readText(dir, file, largestRecord);
    shown.set(file, reading.text);
    if (reading.ok) byFile.set(file, reading.text);
    else problems.push(problemOfText(file, reading.fault));
  }
  return { byFile, shown, problems };
}

function parseAll(
  texts: ReadonlyMap<string, string>,
  studio: string | undefined,
  cache: ParseCache,
): ReadonlyMap<string, ParsedText> {
  return new Map(
    [...texts].map(([file, text]) => [
      file,
      parseText(text, file === studio ? "yaml" : "markdown", cache),
    ]),
  );
}

/** A studio without a tile has nothing to publish yet; one without any record has no archive. */
function findEmptiness({ studio, records }: FoundFiles): Problem[] {
  if (studio === undefined || records.some(({ kind }) => kind === "tile")) return [];
  const isEmpty = records.length === 0;
  const fault = {
    code: isEmpty ? "empty-archive" : "no-tiles",
    message: isEmpty
      ? "The archive is empty: there is no tile, no glaze, no clay and no firing"
      : "There is no tile in the archive yet",
    hint: "Write the first tile as a Markdown file in tiles/, such as tiles/TB-001.md.",
  };
  return [problemOfFile(studio, fault, [], isEmpty ? "error" : "warning")];
}

function countRecords(files: FoundFiles, records: AllRecords): RecordCounts {
  return {
    tiles: records.tiles.ids.size,
    sets: records.sets.ids.size,
    firings: records.firings.ids.size,
    glazes: records.glazes.ids.size,
    clays: records.clays.ids.size,
    materials: records.materials.ids.size,
    pictures: files.pictures.length,
  };
}

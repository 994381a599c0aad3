/**
 * Reads a whole archive, wherever it lies: files → text → sources → records → an archive whose references have
 * been followed. Whatever is wrong on the way is collected, and the rest goes on.
 */
import type { Archive } from "../records/archive.ts";
import type { Place, Problem } from "../records/problem.ts";
import { largestRecord } from "../terms/limits.ts";
import type { ArchiveFiles } from "./archive-files.ts";
import { decodeRecord, turningFault } from "./decode-text.ts";
import { findFiles } from "./find-files.ts";
import { findIdProblems } from "./find-id-problems.ts";
import { followReferences } from "./follow-references.ts";
import type { FoundFiles, RecordFile } from "./found-files.ts";
import { limitProblems } from "./limit-problems.ts";
import { type LocatedProblem, makeLocator, makePlaceFinder } from "./locate.ts";
import type { ParsedText, TextParser } from "./parsed-text.ts";
import { problemOfFile, problemOfText } from "./problem-of-file.ts";
import { type ReadLogs, readLogs } from "./read-logs.ts";
import { type AllRecords, readRecords } from "./read-records.ts";

export interface ReaderOptions {
  /** Ids of the materials that Tilebook knows without a record. */
  readonly builtInMaterials: Iterable<string>;
  readonly texts: TextParser;
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
  /** Every record's file, faulty or not. */
  readonly recordFiles: readonly RecordFile[];
  /** What every record's file held, by the file's name. */
  readonly texts: ReadonlyMap<string, string>;
}

/** Reads an archive; whatever the place it lies in throws goes through. */
export function readArchiveFiles(archive: ArchiveFiles, options: ReaderOptions): ReadArchive {
  const files = findFiles(archive);
  const texts = readTexts(archive, files);
  const parsed = parseAll(texts.byFile, files.studio, options.texts);
  const records = readRecords(files, parsed);
  const logs = readLogs(archive, files, parsed);
  const followed = followReferences(records, {
    files,
    logs: logs.byFiring,
    builtInMaterials: options.builtInMaterials,
  });
  const { studio } = records;
  return {
    archive: studio && { studio, ...followed.archive },
    problems: limitProblems([
      ...files.problems,
      ...texts.problems,
      ...findIdProblems(files, parsed, records),
      ...records.problems,
      ...logs.problems,
      ...followed.problems,
      ...findEmptiness(files),
    ]),
    counts: countRecords(files, records),
    pictures: files.pictures.map(({ file }) => file),
    locate: makeLocator({
      texts: new Map([...texts.shown, ...textsOf(logs)]),
      parsed,
      files,
      yamlOf: options.texts.yamlOf,
    }),
    placeOf: makePlaceFinder({ parsed, files }),
    studioFile: files.studio,
    recordFiles: files.records,
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

function readTexts(archive: ArchiveFiles, { studio, records }: FoundFiles): Texts {
  const byFile = new Map<string, string>();
  const shown = new Map<string, string>();
  const problems: Problem[] = [];
  for (const file of [...(studio === undefined ? [] : [studio]), ...records.map((r) => r.file)]) {
    const reading = decodeRecord(archive.read(file, largestRecord));
    shown.set(file, reading.text);
    const fault = reading.ok ? turningFault(reading.text) : reading.fault;
    if (reading.ok) byFile.set(file, reading.text);
    if (fault) problems.push(problemOfText(file, fault));
  }
  return { byFile, shown, problems };
}

function parseAll(
  texts: ReadonlyMap<string, string>,
  studio: string | undefined,
  { parse }: TextParser,
): ReadonlyMap<string, ParsedText> {
  return new Map(
    [...texts].map(([file, text]) => [file, parse(text, file === studio ? "yaml" : "markdown")]),
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

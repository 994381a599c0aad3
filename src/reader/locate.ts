/** Joins problems to lines of files. Nothing is looked up before somebody asks. */
import type { FieldPath, Place, Problem } from "../records/problem.ts";
import type { Source } from "../records/read.ts";
import { sharedTileFields } from "../records/tile.ts";
import { wordPattern } from "../terms/words.ts";
import { placeOfOffset } from "./decode-text.ts";
import { beginning, makePositionFinder, type PositionFinder } from "./find-position.ts";
import type { FoundFiles } from "./found-files.ts";
import type { Position } from "./line-index.ts";
import type { ParsedText, TextParser } from "./parsed-text.ts";

/** A problem joined to a line of a file. */
export interface LocatedProblem extends Problem, Position {
  /** The whole line; empty for a file that is no text. */
  readonly lineText: string;
  /** The file of the tile that takes the faulty field from here; null for a fault of the file itself. */
  readonly takenBy: string | null;
}

/** What was read, by the file's name. */
export interface ReadFiles {
  readonly texts: ReadonlyMap<string, string>;
  readonly parsed: ReadonlyMap<string, ParsedText>;
  readonly files: FoundFiles;
  readonly yamlOf: TextParser["yamlOf"];
}

/**
 * Makes the function that joins a problem to a line. A field that a tile has from its set or from
 * its studio is found in their file; a missing field at the nearest one around it; what has no line
 * of its own at line 1.
 */
export function makeLocator(read: ReadFiles): (problem: Problem) => LocatedProblem {
  const placeOf = makePlaceFinder(read);
  const positionIn = makePositions(read);
  const linesOf = rememberLines(read.texts);
  return (problem) => {
    const place = placeOf(problem);
    const position = problem.at ?? findWord(read, problem, place, positionIn) ?? positionIn(place);
    return {
      ...problem,
      ...place,
      ...position,
      lineText: linesOf(place.file)[position.line - 1] ?? "",
      takenBy: place.file === problem.file ? null : problem.file,
    };
  };
}

/** Undefined where the word is written otherwise than it reads, with an escape say. */
function findWord(
  read: ReadFiles,
  { word }: Problem,
  place: Place,
  positionIn: (place: Place) => Position,
): Position | undefined {
  const text = read.texts.get(place.file);
  if (!word || text === undefined) return undefined;
  const from =
    place.path.length === 0
      ? text.lastIndexOf(read.parsed.get(place.file)?.notes ?? "")
      : offsetOf(text, positionIn(place));
  const words = [...text.slice(Math.max(0, from)).matchAll(wordPattern)];
  const found = words.filter(([written]) => written === word.text)[word.nth];
  return found && placeOfOffset(text, Math.max(0, from) + found.index);
}

function offsetOf(text: string, { line, column }: Position): number {
  const before = text.split("\n").slice(0, line - 1);
  return before.reduce((sum, { length }) => sum + length + 1, 0) + column - 1;
}

function folderOf(file: string): string {
  return file.slice(0, file.lastIndexOf("/"));
}

/** Each file is parsed once, however many of its fields are looked for. */
function makePositions(read: ReadFiles): (place: Place) => Position {
  const finders = new Map<string, PositionFinder>();
  return ({ file, path, atKey }) => {
    if (path.length === 0) return beginning;
    const finder = finders.get(file) ?? finderOf(read, file);
    finders.set(file, finder);
    return finder(path, atKey);
  };
}

function finderOf(read: ReadFiles, file: string): PositionFinder {
  const text = read.texts.get(file);
  const form = file === read.files.studio ? "yaml" : "markdown";
  const yaml = text === undefined ? undefined : read.yamlOf(text, form);
  return yaml === undefined ? () => beginning : makePositionFinder(yaml);
}

function rememberLines(texts: ReadonlyMap<string, string>): (file: string) => readonly string[] {
  const lines = new Map<string, readonly string[]>();
  return (file) => {
    const known = lines.get(file) ?? texts.get(file)?.split("\n") ?? [];
    lines.set(file, known);
    return known;
  };
}

/** Makes the function that finds the file in which a field is written that a tile may have from elsewhere. */
export function makePlaceFinder({ parsed, files }: Pick<ReadFiles, "parsed" | "files">) {
  const sets = new Map(
    files.records.filter(({ kind }) => kind === "set").map((set) => [set.folder, set.file]),
  );
  const tiles = new Set(
    files.records.filter(({ kind }) => kind === "tile").map(({ file }) => file),
  );
  return (place: Place): Place => {
    if (!tiles.has(place.file)) return place;
    const givers = [
      { file: place.file, under: [] },
      { file: sets.get(folderOf(place.file)), under: ["defaults"] },
      { file: isOfCopyStand(place.path) ? files.studio : undefined, under: [] },
    ];
    return findGiver(place, givers, parsed);
  };
}

/** What a studio may settle for every tile. */
function isOfCopyStand([field, part]: FieldPath): boolean {
  return field === "photo" && (part === "crop" || part === "grey");
}

interface Giver {
  readonly file: string | undefined;
  readonly under: FieldPath;
}

/** The first of those that may give a tile's field and do; else the tile itself. */
function findGiver(
  place: Place,
  givers: readonly Giver[],
  parsed: ReadonlyMap<string, ParsedText>,
): Place {
  const [field] = place.path;
  if (typeof field !== "string" || !(field in sharedTileFields)) return place;
  const shared = place.path.slice(0, field === "photo" ? 2 : 1);
  for (const { file, under } of givers) {
    const source = file === undefined ? undefined : (parsed.get(file)?.source ?? undefined);
    if (file !== undefined && has(source, [...under, ...shared]))
      return { ...place, file, path: [...under, ...place.path] };
  }
  return place;
}

function has(source: Source | undefined, path: FieldPath): boolean {
  const [step, ...rest] = path;
  if (source === undefined || step === undefined) return source !== undefined;
  if (typeof source !== "object" || !Object.hasOwn(source, step)) return false;
  return has((source as Readonly<Record<string | number, Source>>)[step], rest);
}

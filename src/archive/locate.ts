/** Joins problems to lines of files. Nothing is looked up before somebody asks. */
import type { FieldPath, Place, Problem } from "../records/problem.ts";
import type { Source } from "../records/read.ts";
import { sharedTileFields } from "../records/tile.ts";
import { findPosition, type Position } from "./find-position.ts";
import type { FoundFiles } from "./finds.ts";
import type { ParsedText } from "./parse-cache.ts";

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
}

/**
 * Makes the function that joins a problem to a line. A field that a tile has from its set is
 * found in the set's file; a missing field at the nearest one around it; what has no line of its
 * own at line 1.
 */
export function makeLocator(read: ReadFiles): (problem: Problem) => LocatedProblem {
  const sets = new Map(
    read.files.records.filter(({ kind }) => kind === "set").map((set) => [set.folder, set.file]),
  );
  const tiles = new Set(
    read.files.records.filter(({ kind }) => kind === "tile").map(({ file }) => file),
  );
  return (problem) => {
    const set = tiles.has(problem.file) ? sets.get(folderOf(problem.file)) : undefined;
    const place = set === undefined ? problem : findInherited(problem, set, read.parsed);
    const text = read.texts.get(place.file);
    const position = problem.at ?? positionIn(read, place, text);
    return {
      ...problem,
      ...place,
      ...position,
      lineText: text?.split("\n")[position.line - 1] ?? "",
      takenBy: place.file === problem.file ? null : problem.file,
    };
  };
}

function folderOf(file: string): string {
  return file.slice(0, file.lastIndexOf("/"));
}

function positionIn(read: ReadFiles, place: Place, text: string | undefined): Position {
  if (text === undefined) return { line: 1, column: 1 };
  const form = place.file === read.files.studio ? "yaml" : "markdown";
  return findPosition(text, form, place.path, place.atKey);
}

/** The field of the set's defaults that a tile has its own field from, or else the tile's own. */
function findInherited(place: Place, set: string, parsed: ReadonlyMap<string, ParsedText>): Place {
  const [field] = place.path;
  const isShared = typeof field === "string" && field in sharedTileFields;
  const own = parsed.get(place.file)?.source ?? undefined;
  const depth = field === "photo" ? 2 : 1;
  const path = ["defaults", ...place.path.slice(0, depth)];
  const isInherited =
    isShared &&
    !has(own, place.path.slice(0, depth)) &&
    has(parsed.get(set)?.source ?? undefined, path);
  return isInherited ? { ...place, file: set, path: ["defaults", ...place.path] } : place;
}

function has(source: Source | undefined, path: FieldPath): boolean {
  const [step, ...rest] = path;
  if (source === undefined || step === undefined) return source !== undefined;
  if (typeof source !== "object" || !Object.hasOwn(source, step)) return false;
  return has((source as Readonly<Record<string | number, Source>>)[step], rest);
}

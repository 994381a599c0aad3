/** From single records to a whole archive: everything that one record names of another is found. */
import type { Archive, FiringLog } from "../records/archive.ts";
import type { Problem } from "../records/problem.ts";
import { idKey } from "../terms/ids.ts";
import { followTiles } from "./follow-tiles.ts";
import type { FoundFiles } from "./found-files.ts";
import { restorePath } from "./read-partly.ts";
import { type AllRecords, isFaulty, readAtAll } from "./read-records.ts";
import { followLoads, makeFirings } from "./references/firings.ts";
import { followJars, type Jars } from "./references/jars.ts";
import { knownIds } from "./references/look-up.ts";
import type { GlazeNames, MakerCodes } from "./references/lookups.ts";
import { followPictures, type PicturedTile } from "./references/pictures.ts";
import { findUnknownInRecipe, nameGlazes } from "./references/recipes.ts";
import { findUnknownInSet, reservedCodes } from "./references/sets.ts";
import type { TileCodes } from "./references/tile-codes.ts";

/** What lies around the records: other files, and what Tilebook brings itself. */
export interface Surroundings {
  readonly files: FoundFiles;
  /** By the firing's file. */
  readonly logs: ReadonlyMap<string, FiringLog>;
  /** Ids of the materials that Tilebook knows without a record. */
  readonly builtInMaterials: Iterable<string>;
}

export interface FollowedArchive {
  /** Everything but the studio, which may be unknown. */
  readonly archive: Omit<Archive, "studio">;
  readonly problems: readonly Problem[];
}

/**
 * Follows every reference of an archive.
 *
 * @returns the archive, and what is wrong with it. A step, clay or maker that was not found is
 * left out of its tile; one whose record exists but could not be read keeps its id. The tiles of
 * a set that could not be read are left out, for nobody knows their defaults. Recipes stay as
 * they were written.
 */
export function followReferences(
  records: AllRecords,
  { files, logs, builtInMaterials }: Surroundings,
): FollowedArchive {
  const glazes = nameGlazes(records.glazes.ids, readAtAll(records.glazes).values());
  const own = records.materials.ids;
  const materials = new Map([...own, ...knownIds(builtInMaterials), ...own]);
  const makers = knownMakers(records, files.studio);
  const codes = tileCodes(records);
  const firings = { ids: records.firings.ids, read: readAtAll(records.firings) };
  const loads = followLoads(firings, codes);
  const pictures = followPictures(
    files.pictures,
    picturedTiles(records, files),
    unreadRecords(files),
  );
  const jars = followAllJars(records, glazes);
  const named = { files, glazes, firings, makers, loads, pictures, jars: jars.bySet };
  const tiles = followTiles(records, named);
  const setNames = { makers, clays: records.clays.ids, codes };
  return {
    archive: {
      sets: records.sets.read,
      tiles: tiles.read,
      firings: makeFirings(records.firings.read, loads, tiles.read, logs),
      glazes: records.glazes.read,
      clays: records.clays.read,
      materials: records.materials.read,
      pages: records.pages.read,
      pageKeys: new Set(records.pages.ids.keys()),
    },
    problems: [
      ...[...readAtAll(records.sets).values()].flatMap((set) => findUnknownInSet(set, setNames)),
      ...jars.problems,
      ...[...readAtAll(records.glazes).values()].flatMap((glaze) =>
        findUnknownInRecipe(glaze, glazes, materials),
      ),
      ...loads.problems,
      ...tiles.problems,
      ...pictures.problems,
    ].map((problem) => restoreProblem(problem, records)),
  };
}

/** Every tile's file, with the photograph that its record names. */
function picturedTiles({ tiles }: AllRecords, files: FoundFiles): readonly PicturedTile[] {
  const byFile = new Map([...readAtAll(tiles).values()].map(({ file, record }) => [file, record]));
  return files.records
    .filter(({ kind }) => kind === "tile")
    .map((tile) => ({
      ...tile,
      names: byFile.get(tile.file)?.photo?.file,
      isRead: byFile.has(tile.file),
    }));
}

/** Files that were meant as records and are none by their names: what is theirs is not stray. */
function unreadRecords({ problems }: FoundFiles): readonly string[] {
  return problems.filter(({ code }) => code === "record-not-read").map(({ file }) => file);
}

/** The problems of a partly read record are those of the record as it was written. */
function restoreProblem(problem: Problem, { removed }: AllRecords): Problem {
  const fields = removed.get(problem.file);
  return fields ? { ...problem, path: restorePath(problem.path, fields) } : problem;
}

/** Null where it is not known who the makers are. */
function knownMakers(records: AllRecords, file: string | undefined): MakerCodes | null {
  const { studioPartly: studio } = records;
  const isKnown = studio !== null && file !== undefined && !isFaulty(records, file, "makers");
  if (!isKnown) return null;
  const makers = Object.entries(studio.makers ?? {});
  return {
    ids: knownIds(makers.map(([code]) => code)),
    called: new Map(
      makers.flatMap(([code, { name }]) => (name === undefined ? [] : [[name, code]])),
    ),
  };
}

function tileCodes(records: AllRecords): TileCodes {
  const formerly = new Map<string, string>();
  for (const { id, record } of readAtAll(records.tiles).values())
    for (const code of record.formerly ?? []) formerly.set(idKey(code), id);
  const sets = [...readAtAll(records.sets).values()];
  return {
    ids: records.tiles.ids,
    reserved: reservedCodes(sets),
    reservedUnknown:
      sets.length < records.sets.ids.size ||
      sets.some(({ file }) => isFaulty(records, file, "codes")),
    formerly,
  };
}

interface AllJars {
  /** By the set's file. */
  readonly bySet: ReadonlyMap<string, Jars>;
  readonly problems: readonly Problem[];
}

function followAllJars({ sets }: AllRecords, glazes: GlazeNames): AllJars {
  const followed = [...readAtAll(sets).values()].map((set) => ({
    file: set.file,
    ...followJars(set, glazes),
  }));
  return {
    bySet: new Map(followed.map(({ file, value }) => [file, value])),
    problems: followed.flatMap(({ problems }) => problems),
  };
}

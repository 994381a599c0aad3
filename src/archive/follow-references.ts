/** From single records to a whole archive: everything that one record names of another is found. */
import type { Archive, Filed, Tile } from "../records/archive.ts";
import type { Problem } from "../records/problem.ts";
import type { SetRecord } from "../records/set.ts";
import { idKey } from "../terms/ids.ts";
import type { FoundFiles } from "./finds.ts";
import type { AllRecords } from "./read-records.ts";
import { followLoads, type Loads, makeFirings } from "./references/firings.ts";
import { followJars, type Jars } from "./references/jars.ts";
import { type Known, knownIds } from "./references/look-up.ts";
import { type FollowedPictures, followPictures } from "./references/pictures.ts";
import { findUnknownInRecipe, nameGlazes } from "./references/recipes.ts";
import { findUnknownInSet, reservedCodes } from "./references/sets.ts";
import type { GlazeNames } from "./references/sought.ts";
import type { TileCodes } from "./references/tile-codes.ts";
import { followTile } from "./references/tiles.ts";

/** What lies around the records: other files, and what Tilebook brings itself. */
export interface Surroundings {
  readonly files: FoundFiles;
  /** What each firing's log holds, by the firing's file. */
  readonly logs: ReadonlyMap<string, string>;
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
  const glazes = nameGlazes(records.glazes);
  const materials = new Map([...knownIds(builtInMaterials), ...records.materials.ids]);
  const makers = records.studio && knownIds(Object.keys(records.studio.makers ?? {}));
  const codes = tileCodes(records);
  const loads = followLoads(records.firings, codes);
  const pictures = followPictures(
    files.pictures,
    files.records.filter(({ kind }) => kind === "tile"),
  );
  const jars = followAllJars(records, glazes);
  const tiles = followTiles(records, { files, glazes, makers, loads, pictures, jars: jars.bySet });
  const setNames = { makers, clays: records.clays.ids, codes };
  return {
    archive: {
      sets: records.sets.read,
      tiles: tiles.read,
      firings: makeFirings(records.firings, loads, tiles.read, logs),
      glazes: records.glazes.read,
      clays: records.clays.read,
      materials: records.materials.read,
    },
    problems: [
      ...[...records.sets.read.values()].flatMap((set) => findUnknownInSet(set, setNames)),
      ...jars.problems,
      ...[...records.glazes.read.values()].flatMap((glaze) =>
        findUnknownInRecipe(glaze, glazes, materials),
      ),
      ...loads.problems,
      ...tiles.problems,
      ...pictures.problems,
    ],
  };
}

function tileCodes({ tiles, sets }: AllRecords): TileCodes {
  const formerly = new Map<string, string>();
  for (const { id, record } of tiles.read.values())
    for (const code of record.formerly ?? []) formerly.set(idKey(code), id);
  return {
    ids: tiles.ids,
    reserved: reservedCodes(sets.read.values()),
    reservedUnknown: sets.read.size < sets.ids.size,
    formerly,
  };
}

interface AllJars {
  /** By the set's file. */
  readonly bySet: ReadonlyMap<string, Jars>;
  readonly problems: readonly Problem[];
}

function followAllJars({ sets }: AllRecords, glazes: GlazeNames): AllJars {
  const followed = [...sets.read.values()].map((set) => ({
    file: set.file,
    ...followJars(set, glazes),
  }));
  return {
    bySet: new Map(followed.map(({ file, value }) => [file, value])),
    problems: followed.flatMap(({ problems }) => problems),
  };
}

interface TileContext {
  readonly files: FoundFiles;
  readonly glazes: GlazeNames;
  readonly makers: Known | null;
  readonly loads: Loads;
  readonly pictures: FollowedPictures;
  readonly jars: ReadonlyMap<string, Jars>;
}

interface FollowedTiles {
  readonly read: ReadonlyMap<string, Tile>;
  readonly problems: readonly Problem[];
}

function followTiles(records: AllRecords, context: TileContext): FollowedTiles {
  const setOf = setsByFolder(records, context.files);
  const read = new Map<string, Tile>();
  const problems: Problem[] = [];
  for (const [key, tile] of records.tiles.read) {
    const folder = tile.file.slice(0, tile.file.lastIndexOf("/"));
    const set = setOf.get(folder);
    const followed = followTile(tile, {
      set: set?.filed?.id ?? null,
      setRecord: set?.filed?.record,
      jars: context.jars.get(set?.filed?.file ?? "") ?? new Map(),
      jarsUnknown: set !== undefined && set.filed === undefined,
      glazes: context.glazes,
      firings: records.firings,
      makers: context.makers,
      clays: records.clays.ids,
      loadings: context.loads.byTile.get(key) ?? [],
      pictures: context.pictures.byTile.get(tile.file) ?? [],
    });
    problems.push(...followed.problems);
    if (!set || set.filed) read.set(key, followed.value);
  }
  return { read, problems };
}

/** The set of each folder that has one; nothing is filed where it could not be read. */
function setsByFolder(
  { sets }: AllRecords,
  files: FoundFiles,
): ReadonlyMap<string, { readonly filed: Filed<SetRecord> | undefined }> {
  const byFile = new Map([...sets.read.values()].map((set) => [set.file, set]));
  return new Map(
    files.records
      .filter(({ kind }) => kind === "set")
      .map(({ folder, file }) => [folder, { filed: byFile.get(file) }]),
  );
}

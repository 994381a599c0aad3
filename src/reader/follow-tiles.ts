/** Follows every tile, with the set whose folder it lies in. */
import type { Filed, Tile } from "../records/archive.ts";
import type { Problem } from "../records/problem.ts";
import type { SetRecord } from "../records/set.ts";
import type { FoundFiles } from "./found-files.ts";
import { type AllRecords, isFaulty, readAtAll } from "./read-records.ts";
import type { KnownFirings, Loads } from "./references/firings.ts";
import type { Jars } from "./references/jars.ts";
import type { GlazeNames, MakerCodes } from "./references/lookups.ts";
import type { FollowedPictures } from "./references/pictures.ts";
import { followTile } from "./references/tiles.ts";

/** What tiles may name, and what lies beside them. */
export interface TileContext {
  readonly files: FoundFiles;
  readonly glazes: GlazeNames;
  readonly firings: KnownFirings;
  readonly makers: MakerCodes | null;
  readonly loads: Loads;
  readonly pictures: FollowedPictures;
  readonly jars: ReadonlyMap<string, Jars>;
}

export interface FollowedTiles {
  readonly read: ReadonlyMap<string, Tile>;
  readonly problems: readonly Problem[];
}

/** Follows every tile; those that were read only partly, or lie in such a set, only for their faults. */
export function followTiles(records: AllRecords, context: TileContext): FollowedTiles {
  const setOf = setsByFolder(records, context.files);
  const read = new Map<string, Tile>();
  const problems: Problem[] = [];
  for (const [key, tile] of readAtAll(records.tiles)) {
    const set = setOf.get(tile.file.slice(0, tile.file.lastIndexOf("/")));
    const { glazes, firings, makers, jars } = context;
    const followed = followTile(tile, {
      set: set?.filed?.id ?? null,
      setRecord: set?.filed?.record,
      copyStand: records.studioPartly?.photo,
      jars: jars.get(set?.filed?.file ?? "") ?? new Map(),
      jarsUnknown: set?.jarsUnknown ?? false,
      glazes,
      firings,
      makers,
      clays: records.clays.ids,
      loadings: context.loads.byTile.get(key) ?? [],
      pictures: context.pictures.byTile.get(tile.file) ?? [],
      pictureMisnamed: context.pictures.misnamed.has(tile.file),
    });
    problems.push(...followed.problems);
    if (records.tiles.read.has(key) && (set?.isWhole ?? true)) read.set(key, followed.value);
  }
  return { read, problems };
}

interface SetOfFolder {
  /** Undefined where nothing of it could be read. */
  readonly filed: Filed<SetRecord> | undefined;
  readonly isWhole: boolean;
  readonly jarsUnknown: boolean;
}

/** The set of each folder that has one. */
function setsByFolder(records: AllRecords, files: FoundFiles): ReadonlyMap<string, SetOfFolder> {
  const byFile = new Map([...readAtAll(records.sets).values()].map((set) => [set.file, set]));
  const whole = new Set([...records.sets.read.values()].map(({ file }) => file));
  return new Map(
    files.records
      .filter(({ kind }) => kind === "set")
      .map(({ folder, file }) => {
        const filed = byFile.get(file);
        const jarsUnknown = !filed || isFaulty(records, file, "jars");
        return [folder, { filed, isWhole: whole.has(file), jarsUnknown }];
      }),
  );
}

/** Firings with their load lists spelt out, and which loads each tile was in. */
import type { Filed, Firing, FiringLog } from "../../records/archive.ts";
import type { FiringRecord } from "../../records/firing.ts";
import type { Problem } from "../../records/problem.ts";
import { compareIds, idKey } from "../../terms/ids.ts";
import { problemOfFile } from "../problem-of-file.ts";
import type { Known, Mention } from "./look-up.ts";
import { findUnknownCodes, type TileCodes } from "./tile-codes.ts";

/** Firings that may be named, and those that could be read. */
export interface KnownFirings {
  readonly ids: Known;
  readonly read: ReadonlyMap<string, Filed<FiringRecord>>;
}

/** A tile's place in a load, as the load list tells it. */
export interface Loading {
  readonly firing: Filed<FiringRecord>;
  readonly shelf: string;
  readonly mention: Mention;
}

export interface Loads {
  /** The loads of each tile in the order of their days, by the tile's key. */
  readonly byTile: ReadonlyMap<string, readonly Loading[]>;
  readonly problems: readonly Problem[];
}

/** Reads every load list. A load without a day is still to come, so it is the last. */
export function followLoads(firings: KnownFirings, codes: TileCodes): Loads {
  const byTile = new Map<string, Loading[]>();
  const problems: Problem[] = [];
  for (const firing of [...firings.read.values()].toSorted(byDay)) {
    problems.push(...findUnknownCodes(firing, codes));
    for (const loading of loadingsOf(firing)) {
      const key = idKey(loading.mention.written);
      if (!codes.ids.has(key)) continue;
      const earlier = byTile.get(key) ?? [];
      const clash = findClash(loading, earlier);
      if (clash) problems.push(clash);
      else if (earlier.length === 0) byTile.set(key, [loading]);
      else earlier.push(loading);
    }
  }
  return { byTile, problems };
}

function byDay(a: Filed<FiringRecord>, b: Filed<FiringRecord>): number {
  const [x, y] = [a.record.on ?? "9999", b.record.on ?? "9999"];
  return x === y ? compareIds(a.id, b.id) : x < y ? -1 : 1;
}

function loadingsOf(firing: Filed<FiringRecord>): Loading[] {
  return Object.entries(firing.record.tiles ?? {}).flatMap(([shelf, entries]) =>
    entries.flatMap((codes, i) =>
      codes.map((written) => ({
        firing,
        shelf,
        mention: { file: firing.file, path: ["tiles", shelf, i], written },
      })),
    ),
  );
}

/** A tile stands in one place of one kiln on one day. */
function findClash(loading: Loading, earlier: readonly Loading[]): Problem | undefined {
  const { firing, shelf, mention } = loading;
  const other = earlier.find(
    (known) =>
      known.firing === firing ||
      (firing.record.on !== undefined && known.firing.record.on === firing.record.on),
  );
  if (!other) return undefined;
  const twice =
    other.firing === firing
      ? `is in this load twice: on “${other.shelf}” and on “${shelf}”`
      : `is in two loads on ${firing.record.on}: in “${other.firing.id}” and in “${firing.id}”`;
  return problemOfFile(
    mention.file,
    {
      code: other.firing === firing ? "tile-twice-in-load" : "two-loads-on-one-day",
      message: `“${mention.written}” ${twice}`,
      hint: "Take the code out where it does not belong.",
    },
    mention.path,
  );
}

/**
 * The firings as the rest of the program sees them.
 *
 * @param tiles those that a load may list; codes that are only reserved are left out
 * @param logs the logs by their firings' files
 */
export function makeFirings(
  firings: ReadonlyMap<string, Filed<FiringRecord>>,
  loads: Loads,
  tiles: ReadonlyMap<string, { readonly id: string }>,
  logs: ReadonlyMap<string, FiringLog>,
): Map<string, Firing> {
  const lists = new Map<string, { tile: string; shelf: string }[]>();
  for (const [key, tile] of tiles) {
    for (const { firing, shelf } of loads.byTile.get(key) ?? []) {
      const list = lists.get(firing.file) ?? [];
      list.push({ tile: tile.id, shelf });
      lists.set(firing.file, list);
    }
  }
  return new Map(
    [...firings].map(([key, firing]) => [
      key,
      { ...firing, load: lists.get(firing.file) ?? [], log: logs.get(firing.file) ?? null },
    ]),
  );
}

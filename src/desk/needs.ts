/** What tiles wait for: a firing, a photograph, a result. */
import type { Filed, Tile } from "../records/archive.ts";
import { freeCodes, whyTaken } from "../records/next-code.ts";
import type { SetRecord } from "../records/set.ts";
import { compareIds, idKey } from "../terms/ids.ts";
import { indexBy } from "../terms/index-by.ts";
import type { DeskArchive } from "./types.ts";

/** What a tile waits for. One that is lost waits for nothing. */
export interface Needs {
  /** No firing after its last coat. */
  readonly firing: boolean;
  /** Fired, and no photograph of what came out. */
  readonly photograph: boolean;
  /** Fired, and nobody wrote down what came out. */
  readonly result: boolean;
}

export function needsOf({ stage, pictures }: Tile): Needs {
  const isBack = stage === "fired" || stage === "recorded";
  return {
    firing: stage === "waiting",
    photograph: isBack && !pictures.some(({ role }) => role === "result"),
    result: stage === "fired",
  };
}

/** The tiles of a set, or those in none, and which of them wait for what. */
export interface SetNeeds {
  /** Undefined for the tiles that lie in no set. */
  readonly set: Filed<SetRecord> | undefined;
  readonly tiles: readonly Tile[];
  readonly firing: readonly Tile[];
  readonly photograph: readonly Tile[];
  readonly result: readonly Tile[];
  /** Codes kept for the set that no record has yet. */
  readonly withoutRecord: readonly string[];
}

/**
 * What every set's tiles wait for, in the order of the sets' ids, and those in no set at the end,
 * where there are any.
 */
export function needsBySet({ archive, recordFiles }: DeskArchive): readonly SetNeeds[] {
  const bySet = indexBy(archive.tiles.values(), ({ set }) => [set === null ? "" : idKey(set)]);
  const sets = [...archive.sets.values()].sort((a, b) => compareIds(a.id, b.id));
  const needs = sets.map((set) => {
    const free = freeCodes(set.record, whyTaken(archive, recordFiles, set.id));
    return needsOfTiles(set, bySet.get(idKey(set.id)) ?? [], free);
  });
  const loose = bySet.get("") ?? [];
  return loose.length === 0 ? needs : [...needs, needsOfTiles(undefined, loose, [])];
}

function needsOfTiles(
  set: Filed<SetRecord> | undefined,
  tiles: readonly Tile[],
  withoutRecord: readonly string[],
): SetNeeds {
  const sorted = [...tiles].sort((a, b) => compareIds(a.id, b.id));
  const that = (need: keyof Needs) => sorted.filter((tile) => needsOf(tile)[need]);
  return {
    ...{ set, tiles: sorted, withoutRecord },
    ...{ firing: that("firing"), photograph: that("photograph"), result: that("result") },
  };
}

/**
 * What the archive's own tiles say of a practice note. A note rests on common practice alone, so
 * that it yields where the tile itself, or one made and fired alike, shows that all went well.
 */
import { likenessKey } from "../likeness/alike.ts";
import { firingFactsOf } from "../likeness/firing-facts.ts";
import { makeUpOf } from "../likeness/make-up.ts";
import { type Archive, findById, type Tile } from "../records/archive.ts";
import { findLaps, type Lap } from "../records/coat-stack.ts";
import type { Fault } from "../terms/choices.ts";
import { idKey } from "../terms/ids.ts";
import { indexBy } from "../terms/index-by.ts";
import { rememberFor } from "../terms/remember.ts";

/**
 * Whether tiles refute a warning: the tile itself is to be made again as it is and has none of the
 * faults that were warned of; or, where it says nothing either way, one like it is, and none like
 * it has them.
 *
 * @param warned the faults that the note warns of
 */
export function isRefuted(
  archive: Archive,
  tile: Tile,
  warned: readonly Fault[],
  alike: (archive: Archive, tile: Tile) => readonly Tile[] = twinsOf,
): boolean {
  const own = verdictOf(tile, warned);
  if (own !== "open") return own === "well";
  const others = alike(archive, tile).filter((other) => isEvidenceFor(archive, other, tile));
  const verdicts = others.map((other) => verdictOf(other, warned));
  return verdicts.includes("well") && !verdicts.includes("ill");
}

/** Whether a tile came out well, or with what was warned of; open where neither is recorded. */
export function verdictOf({ record }: Tile, warned: readonly Fault[]): "well" | "ill" | "open" {
  const { result: results = [], later = [], fate } = record;
  const faults = [...results, ...later].flatMap((seen) => seen.faults ?? []);
  const named = faults.filter((fault) => fault !== "none");
  const stuck = fate === "stuck" && warned.includes("running");
  if (stuck || named.some((fault) => warned.includes(fault))) return "ill";
  const again = results.at(-1)?.again;
  if (again === "no" && named.length === 0) return "ill";
  return again === "yes" && fate === undefined ? "well" : "open";
}

/** A tile of an unlisted set is nobody else's evidence. */
function isEvidenceFor({ sets }: Archive, other: Tile, tile: Tile): boolean {
  return other.set === tile.set || findById(sets, other.set)?.record.listed !== false;
}

/** Tiles that were made and fired alike. */
function twinsOf(archive: Archive, tile: Tile): readonly Tile[] {
  const { byMake, makeOf } = indexesOf(archive);
  const alike = makeOf(tile).flatMap((key) => byMake.get(key) ?? []);
  return alike.filter((other) => other !== tile);
}

/** Tiles on which one glaze lies directly over another, whatever else is on them. */
export function tilesWithPair(archive: Archive, over: string, under: string): readonly Tile[] {
  return indexesOf(archive).byPair.get(pairKey({ over, under })) ?? [];
}

interface Indexes {
  /** What all tiles share that were made and fired alike; nothing where too little is known. */
  readonly makeOf: (tile: Tile) => readonly string[];
  readonly byMake: ReadonlyMap<string, readonly Tile[]>;
  readonly byPair: ReadonlyMap<string, readonly Tile[]>;
}

/** Made once an archive, since every note of every tile asks. */
const indexesOf = rememberFor((archive: Archive): Indexes => {
  const tiles = [...archive.tiles.values()];
  const factsOf = firingFactsOf(archive, new Map());
  const makeOf = rememberFor((tile: Tile) => {
    const key = likenessKey(makeUpOf(tile, factsOf));
    return key === undefined ? [] : [key];
  });
  return {
    makeOf,
    byMake: indexBy(tiles, makeOf),
    byPair: indexBy(tiles, (tile) => findLaps(tile.steps).map(pairKey)),
  };
});

function pairKey({ over, under }: Pick<Lap, "over" | "under">): string {
  return JSON.stringify([idKey(over), idKey(under)]);
}

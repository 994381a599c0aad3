/** What stood in a kiln. */

import { findWitnessCone } from "../../firing/witness.ts";
import type { Firing, Tile } from "../../records/archive.ts";
import type { FiringRecord, Segment, Witness } from "../../records/firing.ts";
import { byWord } from "../../terms/by-word.ts";
import type { Atmosphere, HeatSource, KindOfFiring } from "../../terms/choices.ts";
import type { Cone } from "../../terms/cones.ts";
import { compareIds, idKey } from "../../terms/ids.ts";
import { addTo } from "../../terms/index-by.ts";
import { firingUrl } from "../addresses.ts";
import type { Link } from "../link.ts";
import type { ShownHeat } from "./heat.ts";
import { compareShelves } from "./shelves.ts";
import type { FiringViews } from "./tile-firings.ts";

/** What somebody wrote of a firing and everyone may read: its load list names tiles that are not for everyone. */
export interface FiringFacts {
  readonly on: string | null;
  readonly kind: KindOfFiring;
  /** The kiln as it was written here. */
  readonly kilnName: string | null;
  readonly heatedBy: HeatSource | null;
  readonly atmosphere: Atmosphere | null;
  /** The cone that was aimed at. */
  readonly cone: Cone | null;
  /** What the witness cones showed, by shelf. */
  readonly witnessed: Readonly<Record<string, Witness>>;
  readonly unit: "C" | "F" | null;
  readonly schedule: readonly Segment[] | null;
}

export interface CatalogueFiring extends FiringFacts, ShownHeat {
  readonly id: string;
  readonly url: string;
  readonly notes: string;
  readonly kiln: Link | null;
  /** The cone that was reached, by shelf; null where the bends tell of none. */
  readonly witness: Readonly<Record<string, Cone | null>>;
  /** Its tiles by shelf, top first; `null` where a tile does not say. */
  readonly shelves: readonly { readonly shelf: string | null; readonly tiles: readonly string[] }[];
}

/**
 * Every firing with its tiles by shelf, newest first.
 *
 * @param kilns the page of each kiln by its firings' keys
 */
export function listFirings(
  views: FiringViews,
  tiles: readonly Tile[],
  kilns: ReadonlyMap<string, Link>,
): readonly CatalogueFiring[] {
  const stood = tilesByFiring(tiles);
  return [...views.values()]
    .sort((a, b) => newestFirst(a.firing, b.firing))
    .map(({ firing, smallCurve: _, ...shown }) => ({
      id: firing.id,
      url: firingUrl(firing.id),
      ...factsOf(firing.record),
      notes: firing.notes,
      kiln: kilns.get(idKey(firing.id)) ?? null,
      witness: witnessByShelf(firing.record),
      shelves: shelvesOf(stood.get(idKey(firing.id)) ?? []),
      ...shown,
    }));
}

function factsOf(record: FiringRecord): FiringFacts {
  return {
    on: record.on ?? null,
    kind: record.kind,
    kilnName: record.kiln ?? null,
    heatedBy: record.heatedBy ?? null,
    atmosphere: record.atmosphere ?? null,
    cone: record.cone ?? null,
    witnessed: byWord(Object.entries(record.witness ?? {})),
    unit: record.unit ?? null,
    schedule: record.schedule ?? null,
  };
}

function witnessByShelf({ witness = {} }: FiringRecord): CatalogueFiring["witness"] {
  return byWord(
    Object.entries(witness).map(([shelf, seen]) => [shelf, findWitnessCone(seen) ?? null]),
  );
}

function newestFirst(a: Firing, b: Firing): number {
  return compareIds(b.record.on ?? "9999", a.record.on ?? "9999") || compareIds(a.id, b.id);
}

/** A tile's place in a load. */
interface Standing {
  readonly tile: string;
  readonly shelf: string | null;
}

/** What stood in each firing, by the firing's key: a tile that names it twice where it did first. */
function tilesByFiring(tiles: readonly Tile[]): ReadonlyMap<string, readonly Standing[]> {
  const byFiring = new Map<string, Standing[]>();
  for (const { id, steps } of tiles) {
    const shelves = new Map<string, string | null>();
    for (const step of steps) {
      if (step.step !== "fired" || step.firing === null) continue;
      const key = idKey(step.firing);
      if (!shelves.has(key)) shelves.set(key, step.shelf);
    }
    for (const [key, shelf] of shelves) addTo(byFiring, key, { tile: id, shelf });
  }
  return byFiring;
}

function shelvesOf(stood: readonly Standing[]): CatalogueFiring["shelves"] {
  const byShelf = new Map<string | null, string[]>();
  for (const { tile, shelf } of stood) addTo(byShelf, shelf, tile);
  return [...byShelf]
    .sort(([a], [b]) => compareShelves(a, b))
    .map(([shelf, codes]) => ({ shelf, tiles: codes.sort(compareIds) }));
}

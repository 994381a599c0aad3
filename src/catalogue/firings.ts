/** What the kiln did to a tile, and what stood in a kiln. */

import { findWitnessCone } from "../firing/witness.ts";
import {
  type Archive,
  type FiredStep,
  type Firing,
  findById,
  type Tile,
} from "../records/archive.ts";
import type { FiringRecord } from "../records/firing.ts";
import { shelves as namedShelves } from "../terms/choices.ts";
import { type Cone, findHottest } from "../terms/cones.ts";
import { compareIds, idKey } from "../terms/ids.ts";
import { firingUrl } from "./addresses.ts";
import type { CatalogueFiring, TileFiring } from "./types.ts";

/** The firings a tile had, in the order of its steps. */
export function firingsOf(tile: Tile, archive: Archive): readonly TileFiring[] {
  return tile.steps
    .filter((step) => step.step === "fired")
    .map((step) => tileFiring(step, archive));
}

function tileFiring(step: FiredStep, archive: Archive): TileFiring {
  const firing = findById(archive.firings, step.firing);
  const { record } = firing ?? {};
  return {
    kind: step.kind,
    firing: firing ? { id: firing.id, name: firing.id, url: firingUrl(firing.id) } : null,
    on: record?.on ?? null,
    cone: (record && coneAtShelf(record, step.shelf)) ?? null,
    atmosphere: record?.atmosphere ?? null,
    heatedBy: record?.heatedBy ?? null,
    kiln: record?.kiln ?? null,
    shelf: step.shelf,
  };
}

/** The cone at a shelf: what its witness cone showed, else what was aimed at. */
export function coneAtShelf(record: FiringRecord, shelf: string | null): Cone | undefined {
  const witness = shelf === null ? undefined : record.witness?.[shelf];
  return (witness && findWitnessCone(witness)) ?? record.cone;
}

/** The hottest firing that is no bisque, which decides a tile's cone and atmosphere. */
export function findDecidingFiring(firings: readonly TileFiring[]): TileFiring | undefined {
  const others = firings.filter((firing) => firing.kind !== "bisque");
  const hottest = findHottest(others.flatMap((firing) => firing.cone ?? []));
  return others.findLast((firing) => firing.cone === hottest) ?? others.at(-1);
}

/** Every firing with its tiles by shelf, newest first. */
export function listFirings(archive: Archive): readonly CatalogueFiring[] {
  const tiles = [...archive.tiles.values()];
  return [...archive.firings.values()].sort(newestFirst).map((firing) => ({
    id: firing.id,
    url: firingUrl(firing.id),
    record: firing.record,
    notes: firing.notes,
    witness: witnessByShelf(firing.record),
    shelves: shelvesOf(firing, tiles),
  }));
}

function witnessByShelf({ witness = {} }: FiringRecord): CatalogueFiring["witness"] {
  return Object.fromEntries(
    Object.entries(witness).map(([shelf, seen]) => [shelf, findWitnessCone(seen) ?? null]),
  );
}

function newestFirst(a: Firing, b: Firing): number {
  return compareIds(b.record.on ?? "9999", a.record.on ?? "9999") || compareIds(a.id, b.id);
}

function shelvesOf(firing: Firing, tiles: readonly Tile[]): CatalogueFiring["shelves"] {
  const byShelf = new Map<string | null, string[]>();
  for (const tile of tiles) {
    const step = tile.steps.find((other) => isIn(other, firing));
    if (!step) continue;
    const shelf = (step as FiredStep).shelf;
    byShelf.set(shelf, [...(byShelf.get(shelf) ?? []), tile.id]);
  }
  return [...byShelf]
    .sort(([a], [b]) => shelfPlace(a) - shelfPlace(b) || compareIds(a ?? "", b ?? ""))
    .map(([shelf, codes]) => ({ shelf, tiles: codes.sort(compareIds) }));
}

function isIn(step: Tile["steps"][number], firing: Firing): boolean {
  return step.step === "fired" && step.firing !== null && idKey(step.firing) === idKey(firing.id);
}

function shelfPlace(shelf: string | null): number {
  if (shelf === null) return namedShelves.length + 1;
  const place = namedShelves.indexOf(shelf as (typeof namedShelves)[number]);
  return place < 0 ? namedShelves.length : place;
}

/** What the kiln did to a tile, and what stood in a kiln. */

import { coneAtShelf, findWitnessCone, readWitness } from "../../firing/witness.ts";
import {
  type Archive,
  type FiredStep,
  type Firing,
  findById,
  type Tile,
  type TileStep,
} from "../../records/archive.ts";
import type { FiringRecord } from "../../records/firing.ts";
import { byWord } from "../../terms/by-word.ts";
import { findHottest } from "../../terms/cones.ts";
import { compareIds, idKey } from "../../terms/ids.ts";
import { addTo } from "../../terms/index-by.ts";
import { firingUrl } from "../addresses.ts";
import type { Link } from "../link.ts";
import type { CatalogueFiring, CatalogueStep, FiringFacts, TileFiring } from "../types.ts";
import type { FiringView } from "./heat.ts";
import { compareShelves } from "./shelves.ts";

/** What is shown of firings, by `idKey`. */
export type FiringViews = ReadonlyMap<string, FiringView>;

/** A tile's steps, each firing with what is known of it. */
export function withFirings(
  steps: readonly TileStep[],
  archive: Archive,
  views: FiringViews,
): readonly CatalogueStep[] {
  return steps.map((step) => (step.step === "fired" ? tileFiring(step, archive, views) : step));
}

/** The firings among a tile's steps, in their order. */
export function firingsOf(steps: readonly CatalogueStep[]): readonly TileFiring[] {
  return steps.filter((step) => step.step === "fired");
}

function tileFiring(step: FiredStep, archive: Archive, views: FiringViews): TileFiring {
  const firing = findById(archive.firings, step.firing);
  const { record } = firing ?? {};
  return {
    ...step,
    page: firing ? firingLink(firing) : null,
    on: record?.on ?? null,
    cone: (record && coneAtShelf(record, step.shelf)) ?? null,
    aim: record?.cone ?? null,
    atmosphere: record?.atmosphere ?? null,
    heatedBy: record?.heatedBy ?? null,
    kiln: record?.kiln ?? null,
    witness: (record && witnessWordsAt(record, step.shelf)) ?? null,
    ...heatBeside(findById(views, step.firing)),
  };
}

export function firingLink({ id }: Firing): Link {
  return { id, name: id, url: firingUrl(id) };
}

function heatBeside(
  view: FiringView | undefined,
): Pick<TileFiring, "reached" | "agreement" | "curve"> {
  const { heat = null, story, smallCurve = null } = view ?? {};
  return {
    reached: heat && { from: heat.from, words: heat.reached },
    agreement: story?.agreement ?? "unknown",
    curve: smallCurve,
  };
}

function witnessWordsAt(record: FiringRecord, shelf: string | null): string | undefined {
  const witness = shelf === null ? undefined : record.witness?.[shelf];
  const reading = witness && readWitness(witness);
  return reading?.ok ? reading.words : undefined;
}

/** The hottest firing that is no bisque, which decides a tile's cone and atmosphere. */
export function findDecidingFiring(steps: readonly CatalogueStep[]): TileFiring | undefined {
  const others = firingsOf(steps).filter((firing) => firing.kind !== "bisque");
  const hottest = findHottest(others.flatMap((firing) => firing.cone ?? []));
  return others.findLast((firing) => firing.cone === hottest) ?? others.at(-1);
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

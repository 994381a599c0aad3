/**
 * Glazes on a tile that run, by their record and by what the archive's tiles did. What a rule makes of
 * it for ware that stands upright is that rule's to say; this tells who ran.
 */
import { listed } from "../../templates/words/english/numbers.ts";
import { isRunner, layersKey } from "../catalogue/runners.ts";
import { findFiringCone } from "../checks/firing-cone.ts";
import { isGlazeFiring } from "../checks/steps.ts";
import { type Archive, type Firing, findById, type Tile } from "../records/archive.ts";
import { coatsThatCount } from "../records/coat-stack.ts";
import { compareIds } from "../terms/ids.ts";
import { indexBy } from "../terms/index-by.ts";
import { rememberFor } from "../terms/remember.ts";
import { type Caution, warning } from "./caution.ts";
import { glazesAt } from "./unjudged.ts";

/** So many tiles that ran are named. */
const mostNamed = 3;

/** Nothing of it in a bisque, which melts no glaze. */
export function running(archive: Archive, tile: Tile, { id, record }: Firing): readonly Caution[] {
  if (record.kind === "bisque" || coatsThatCount(tile.steps).length === 0) return [];
  const told = [...byRecord(archive, tile, id), ...byTiles(archive, tile)];
  return told.length === 0 ? [] : [warning("glaze-runs", told.join(". "), guard)];
}

const guard =
  "Stand it on something that catches drips, away from its neighbours. A run of glaze breaks off sharp.";

function byRecord(archive: Archive, tile: Tile, firing: string): readonly string[] {
  const names = glazesAt(archive, tile, firing)
    .filter(({ moves }) => moves === "runs")
    .map(({ name }) => name);
  if (names.length === 0) return [];
  return [
    `${listed(names)} ${names.length === 1 ? "runs, as its record says" : "run, as their records say"}`,
  ];
}

/** Tiles with the same glazes on each other that ran: how far on which test, since no two are alike. */
function byTiles(archive: Archive, tile: Tile): readonly string[] {
  const ran = (runnersOf(archive).get(layersKey(tile)) ?? [])
    .filter((other) => other !== tile && mayTell(archive, other, tile))
    .sort((a, b) => (farthest(b) ?? -1) - (farthest(a) ?? -1) || compareIds(a.id, b.id));
  if (ran.length === 0) return [];
  const told = ran.slice(0, mostNamed).map((other) => ranWords(archive, other));
  const more = ran.length - told.length;
  return [`The same glazes ran before: ${listed(more > 0 ? [...told, `${more} more`] : told)}`];
}

const runnersOf = rememberFor(({ tiles }: Archive) =>
  indexBy(
    [...tiles.values()].filter((tile) => hasRunHere(tile)),
    (tile) => [layersKey(tile)],
  ),
);

function hasRunHere({ record: { result = [] } }: Tile): boolean {
  return result.some(({ run, faults = [] }) =>
    isRunner({ run: run ?? null, faults: faults.filter((fault) => fault !== "none") }),
  );
}

/** A tile of an unlisted set is nobody else's evidence. */
function mayTell({ sets }: Archive, other: Tile, tile: Tile): boolean {
  return other.set === tile.set || findById(sets, other.set)?.record.listed !== false;
}

function farthest({ record: { result = [] } }: Tile): number | null {
  const runs = result.flatMap(({ run }) => run ?? []);
  return runs.length > 0 ? Math.max(...runs) : null;
}

/** `EV-2 (12 mm, upright, cone 6)` */
function ranWords(archive: Archive, tile: Tile): string {
  const last = tile.steps.findLast(isGlazeFiring);
  const firing = findById(archive.firings, last?.firing ?? null);
  const cone = firing && findFiringCone(firing.record)?.cone;
  const run = farthest(tile);
  const facts = [
    ...(run === null ? [] : [`${run} mm`]),
    tile.record.shape ?? "flat",
    ...(cone === undefined ? [] : [`cone ${cone}`]),
  ];
  return `${tile.id} (${facts.join(", ")})`;
}

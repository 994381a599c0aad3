/** What the page of a load shows of the archive. */
import { formatDay } from "../../../templates/words/english/numbers.ts";
import { findClayRange } from "../../checks/clay-range.ts";
import { coatsOn } from "../../checks/steps.ts";
import { awaitedBy, awaits } from "../../loads/awaited.ts";
import { kilnsOf, lastOf, nextFiringId } from "../../loads/kiln-habits.ts";
import { shelvesOf } from "../../loads/shelves.ts";
import { type Archive, type Firing, findById, type Tile } from "../../records/archive.ts";
import { type KindOfFiring, kindsOfFiring } from "../../terms/choices.ts";
import { formatConeRange } from "../../terms/cones.ts";
import { compareIds } from "../../terms/ids.ts";
import type { DeskArchive } from "../types.ts";
import { sumOf } from "../work.ts";
import type { Habit, LoadView, TileToLoad } from "./types.ts";

/** More than any kiln of tests holds; further codes can be typed. */
const mostTiles = 400;

/** @param today as ISO 8601: the day in the id that is offered */
export function viewLoad(
  { archive, texts }: DeskArchive,
  firing: Firing | undefined,
  today: string,
): LoadView {
  const waiting = tilesToLoad(archive);
  return {
    tiles: waiting.slice(0, mostTiles),
    more: Math.max(0, waiting.length - mostTiles),
    habits: habitsOf(archive),
    ids: Object.fromEntries(
      kindsOfFiring.map((kind) => [kind, nextFiringId(archive, kind, today)]),
    ),
    firing: firing
      ? {
          id: firing.id,
          seen: sumOf(texts.get(firing.file) ?? ""),
          kind: firing.record.kind,
          shelves: shelvesOf(firing),
        }
      : null,
  };
}

function tilesToLoad(archive: Archive): readonly TileToLoad[] {
  return [...archive.tiles.values()]
    .sort((a, b) => compareIds(a.set ?? "\uffff", b.set ?? "\uffff") || compareIds(a.id, b.id))
    .flatMap((tile) => {
      const awaited = awaitedBy(archive, tile);
      if (!awaited) return [];
      const kinds = kindsOfFiring.filter((kind) => awaits(awaited, kind));
      const set = findById(archive.sets, tile.set)?.record.name ?? null;
      const { listedIn } = awaited;
      return [{ code: tile.id, set, words: tileWords(archive, tile), kinds, listedIn }];
    });
}

/** `Soot over Liner, on Buff stoneware (cones 5–9)` */
export function tileWords(archive: Archive, tile: Tile): string {
  const glazes = coatsOn(tile.steps)
    .toReversed()
    .map(({ glazes: ids }) => ids.map((id) => nameOf(archive, id)).join(" to "));
  const names = glazes.filter((name, at) => name !== glazes[at - 1]);
  const clay = findById(archive.clays, tile.clay);
  const range = clay && findClayRange(archive, clay)?.range;
  const cones = range ? ` (cones ${formatConeRange(range)})` : "";
  const on = clay ? `on ${clay.record.name}${cones}` : "on a clay nobody wrote down";
  return names.length === 0 ? `Bare, ${on}` : `${names.join(" over ")}, ${on}`;
}

function nameOf({ glazes }: Archive, id: string): string {
  return findById(glazes, id)?.record.name ?? id;
}

function habitsOf(archive: Archive): readonly Habit[] {
  return kindsOfFiring.flatMap((kind) =>
    ["", ...kilnsOf(archive)].flatMap((kiln) => habitOf(archive, kind, kiln) ?? []),
  );
}

function habitOf(archive: Archive, kind: KindOfFiring, kiln: string): Habit | undefined {
  const last = lastOf(archive, kind, kiln === "" ? undefined : kiln);
  if (!last) return undefined;
  const { on = "", cone = "", atmosphere = "", heatedBy = "", kiln: ofKiln = "" } = last.record;
  const shelves = shelvesOf(last).map(({ name }) => name);
  const values = [cone && `cone ${cone}`, atmosphere, heatedBy, kiln === "" && ofKiln].filter(
    Boolean,
  );
  const words = `${values.join(", ")}: as in ${last.id} on ${formatDay(on)}`;
  return { ...{ kind, kiln, words, ofKiln }, ...{ cone, atmosphere, heatedBy, shelves } };
}

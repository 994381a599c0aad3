import type { Archive, Tile } from "../../records/archive.ts";
import { compareCones } from "../../terms/cones.ts";
import { commonPractice, type TileRule } from "../check.ts";
import {
  findClay,
  findHotFiring,
  firstOfEach,
  glazesOf,
  type Heat,
  type HotFiring,
  outsideOf,
  type Subject,
} from "../heat.ts";
import { type HeatWarning, noteHeats } from "../range-notes.ts";
import { coatsOn, isGlazeFiring } from "../steps.ts";

/** What too little heat does to a glaze and to a clay. */
const warnings = {
  glaze: {
    faults: ["pinholing", "underfired"],
    hint: "Expect it dry, rough or not melted; fire the next one to its range.",
  },
  clay: {
    faults: ["crazing", "underfired"],
    hint: "Expect the clay softer and more absorbent than when mature, and glazes that craze on it.",
  },
} as const satisfies Record<Subject["kind"], HeatWarning>;

export const coolerThanRange: TileRule = {
  of: "tile",
  name: "cooler-than-range",
  severity: "warning",
  source: commonPractice,
  explains:
    "The hottest firing after a layer went on was cooler than the range of that glaze, or the hottest of all cooler than that of the clay.",
  find: (archive, tile) => noteHeats(archive, tile, findTooCool(archive, tile), warnings),
};

function findTooCool(archive: Archive, tile: Tile): readonly Heat[] {
  const clay = findClay(archive, tile);
  const ofClay = clay?.countsAs === null && !isRaku(tile) ? tooCool(archive, tile, clay, 0) : [];
  const ofGlazes = coatsOn(tile.steps).flatMap((coat) =>
    glazesOf(archive, coat).flatMap((glaze) =>
      tooCool(archive, tile, glaze, tile.steps.indexOf(coat)),
    ),
  );
  const files = [...ofClay, ...ofGlazes].map((heat) => ({ ...heat, file: heat.subject.file }));
  return firstOfEach(files);
}

/** Raku takes a clay for its grog, and fires it well below its range on purpose. */
function isRaku({ steps }: Tile): boolean {
  return steps.some((step) => step.step === "fired" && step.kind === "raku");
}

function tooCool(archive: Archive, tile: Tile, subject: Subject, since: number): Heat[] {
  const hottest = findHottestFiring(archive, tile, since);
  if (!hottest) return [];
  const off = outsideOf(hottest.cone, subject.range);
  return off.outside < 0 ? [{ ...hottest, subject, ...off }] : [];
}

/**
 * The hottest firing since a step. Undefined while it may still come: where the cone of one is not
 * known, or which firings there were, or where there were only bisques and no result says that this was all.
 */
function findHottestFiring(archive: Archive, tile: Tile, since: number): HotFiring | undefined {
  if (tile.firingsUnknown) return undefined;
  const indices = tile.steps.flatMap((step, i) => (i >= since && step.step === "fired" ? [i] : []));
  const done = tile.record.result !== undefined || tile.steps.slice(since).some(isGlazeFiring);
  const known = indices.flatMap((i) => findHotFiring(archive, tile, i) ?? []);
  if (!done || known.length < indices.length) return undefined;
  return known.reduce<HotFiring | undefined>(
    (best, next) => (best && compareCones(best.cone, next.cone) >= 0 ? best : next),
    undefined,
  );
}

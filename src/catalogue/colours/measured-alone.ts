/** What a tile with one glaze tells of that glaze's own colour. */

import type { MeasuredColour } from "../../colour/measure.ts";
import type { Cooling } from "../../firing/cooling.ts";
import { lastValue, type MakeUp } from "../../likeness/make-up.ts";
import type { CoatStep, TileStep } from "../../records/archive.ts";
import { coatsThatCount, stepsThatLast } from "../../records/coat-stack.ts";
import type { Area, Atmosphere, Cover, Fault, HeatSource, Way } from "../../terms/choices.ts";
import type { Cone } from "../../terms/cones.ts";
import { findDecidingFiring, firingsOf, type TileFiring } from "../kilns/tile-firings.ts";
import type { Link } from "../link.ts";
import type { CatalogueTile } from "../tiles.ts";

/** What of the fire lands on a glaze or goes into it, beside heat and air. */
export type FireOnGlaze = Extract<HeatSource, "pit" | "saggar" | "salt" | "soda" | "wood"> | "raku";

/**
 * How a glaze lies on its tile: "even" all over in the same number of coats, "uneven" all over and
 * thicker in places, "partial" where some of the clay may show.
 */
export type Lie = "even" | "uneven" | "partial";

/** The measured colour of a tile that has one glaze alone, and what it depends on. */
export interface MeasuredAlone {
  readonly tile: Link;
  readonly colour: MeasuredColour;
  readonly clay: Link | null;
  readonly cone: Cone | null;
  readonly atmosphere: Atmosphere | null;
  readonly fire: FireOnGlaze | null;
  /** Null where nobody counted them, and where the glaze does not lie evenly. */
  readonly coats: number | null;
  readonly lie: Lie;
  readonly cover: Cover | null;
  readonly where: readonly Area[];
  /** The ways it was put on, in alphabetical order. */
  readonly ways: readonly Way[];
  readonly texture: string;
  readonly faults: readonly Fault[];
  /** Whether the tile has been in more than one glaze firing. */
  readonly firedAgain: boolean;
  readonly cooling: Cooling;
  readonly makeUp: MakeUp;
}

/**
 * The measurement of a tile that has one glaze alone; undefined where its photograph was not
 * measured.
 *
 * A number of coats is told only of a glaze that lies evenly: what was measured is the mean of the
 * middle of the photograph, which for several areas of unlike thickness belongs to none of them.
 */
export function measureAlone(tile: CatalogueTile): MeasuredAlone | undefined {
  const coats = coatsThatCount(tile.steps);
  if (tile.colour === null || coats.length === 0) return undefined;
  const lie = lieOf(tile.steps, coats);
  return {
    tile: { id: tile.id, name: tile.id, url: tile.url },
    colour: tile.colour,
    clay: tile.clay,
    cone: tile.cone,
    atmosphere: tile.atmosphere,
    fire: fireOn(tile),
    coats: lie === "even" ? sumOf(coats) : null,
    lie,
    cover: coats.find(({ cover }) => cover !== null)?.cover ?? null,
    where: [...new Set(coats.flatMap(({ where }) => where))],
    ways: [...new Set(coats.flatMap(({ by }) => by ?? []))].sort(),
    texture: tile.texture,
    faults: tile.faults,
    firedAgain: glazeFirings(tile).length > 1,
    cooling: (lastValue(tile.makeUp, "cooling") ?? "unknown") as Cooling,
    makeUp: tile.makeUp,
  };
}

/** Resists and tools may have left clay bare, wherever they were used. */
function lieOf(steps: readonly TileStep[], coats: readonly CoatStep[]): Lie {
  const spared = stepsThatLast(steps).some(({ step }) => step === "resist" || step === "remove");
  if (spared || !coats.some(isAllOver)) return "partial";
  return coats.every(isAllOver) ? "even" : "uneven";
}

/** Ways that leave gaps, whatever their area. */
const patchy: readonly (Way | null)[] = [
  "dot",
  "drip",
  "pen",
  "spatter",
  "sponge-stamp",
  "stencil",
  "trail",
];

function isAllOver({ where, cover, by }: CoatStep): boolean {
  return where.includes("all") && cover === null && !patchy.includes(by);
}

/** Null where a layer's coats were not written down. */
function sumOf(coats: readonly CoatStep[]): number | null {
  return coats.reduce<number | null>(
    (sum, coat) => (sum === null || coat.coats === null ? null : sum + coat.coats),
    0,
  );
}

/** The firings after the bisque that a tile has had. A firing with a page and no day is still to come. */
export function glazeFirings({ steps }: CatalogueTile): readonly TileFiring[] {
  return firingsOf(steps).filter(
    ({ kind, page, on }) => kind !== "bisque" && (page === null || on !== null),
  );
}

const landsOnGlaze: readonly string[] = ["pit", "saggar", "salt", "soda", "wood"];

/** What of the fire landed on a tile, or went into its glaze; null where nothing is known to have. */
export function fireOn({ steps, heatedBy }: CatalogueTile): FireOnGlaze | null {
  if (findDecidingFiring(steps)?.kind === "raku") return "raku";
  return heatedBy !== null && landsOnGlaze.includes(heatedBy) ? (heatedBy as FireOnGlaze) : null;
}

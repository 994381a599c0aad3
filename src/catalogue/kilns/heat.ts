/** What a kiln did, reduced to what pages and data files show of it. */

import { conesAtRate } from "../../firing/chart.ts";
import type { Curve } from "../../firing/curve.ts";
import { type Heat, type HeatReached, heatReached } from "../../firing/heat.ts";
import { coneAtPlace, type EquivalentCone } from "../../firing/heat-work.ts";
import { type FiringHeat, heatOf, scheduleOf } from "../../firing/of-record.ts";
import { segmentsInCelsius } from "../../firing/schedule.ts";
import { thinCurve } from "../../firing/thin.ts";
import type { Archive, Firing } from "../../records/archive.ts";
import type { Segment } from "../../records/firing.ts";
import type { Cone } from "../../terms/cones.ts";
import { type FiringStory, storyFor } from "./story.ts";

export type HeatFrom = "log" | "programme";

export interface CatalogueHeat extends Heat, HeatReached {
  readonly from: HeatFrom;
  /** The ends of its range as cones; `high` is null where that end is open. */
  readonly rangeInCones: { readonly low: EquivalentCone; readonly high: EquivalentCone | null };
}

export interface Programme {
  readonly curve: Curve;
  /** In °C, whichever unit it was written in. */
  readonly segments: readonly Segment[];
}

export interface FiringLogRead {
  readonly curve: Curve;
  /** What was taken for what, and what was made of its faults: a sentence each. */
  readonly taken: readonly string[];
}

/** The temperatures at which cones are down, at one rate of climbing. */
export interface ConeScale {
  /** °C an hour over the last 100 °C. */
  readonly ratePerHour: number;
  /** Coolest first, °C. */
  readonly steps: readonly { readonly cone: Cone; readonly celsius: number }[];
}

/** What is shown of one firing's heat on its own page. */
export interface ShownHeat {
  /** From the log or, without one that can be used, from the programme; null without either. */
  readonly heat: CatalogueHeat | null;
  /** Null without a schedule. */
  readonly programme: Programme | null;
  /** Null without a log that can be used. */
  readonly log: FiringLogRead | null;
  /** What the cones stand for beside the curves. */
  readonly coneScale: ConeScale;
  readonly story: FiringStory;
}

/** The same, and what is shown of it beside its tiles. */
export interface FiringView extends ShownHeat {
  readonly firing: Firing;
  /** Of log or programme, thinned for a small drawing. */
  readonly smallCurve: Curve | null;
}

/** The most points of a curve that is drawn large, and small. */
const [manyPoints, fewPoints] = [200, 60];

/**
 * The view of every firing by `idKey` of its id.
 *
 * @param heats what was reckoned of each; one that is missing is reckoned without its log
 */
export function viewFirings(
  { firings }: Archive,
  heats: ReadonlyMap<string, FiringHeat>,
): ReadonlyMap<string, FiringView> {
  return new Map(
    [...firings].map(([key, firing]) => [
      key,
      viewFiring(firing, heats.get(key) ?? heatOf(firing.record)),
    ]),
  );
}

function viewFiring(firing: Firing, found: FiringHeat): FiringView {
  const curve = usableCurve(found.log?.curve) ?? usableCurve(found.schedule?.curve);
  return {
    firing,
    heat: heatFor(found),
    programme: programmeOf(firing, found),
    log: logOf(found),
    coneScale: coneScaleFor(found.heat?.lastRate ?? null),
    story: storyFor(found.story),
    smallCurve: curve ? drawn(curve, fewPoints) : null,
  };
}

function usableCurve(curve: Curve | undefined): Curve | undefined {
  return curve && curve.length > 1 ? curve : undefined;
}

/** Thinned, and rounded to a tenth of a minute and of a degree. */
function drawn(curve: Curve, most: number): Curve {
  return thinCurve(curve, most).map(({ minutes, celsius, untimed }) => ({
    minutes: tenths(minutes),
    celsius: tenths(celsius),
    ...(untimed ? { untimed } : {}),
  }));
}

function tenths(value: number): number {
  return Math.round(value * 10) / 10;
}

function heatFor({ heat, heatFrom }: FiringHeat): CatalogueHeat | null {
  return (
    heat && {
      ...heat,
      from: heatFrom === "log" ? "log" : "programme",
      openRange: heatReached(heat).openRange,
      rangeInCones: {
        low: coneAtPlace(heat.range.low),
        high: Number.isFinite(heat.range.high) ? coneAtPlace(heat.range.high) : null,
      },
    }
  );
}

function programmeOf({ record }: Firing, { schedule: found }: FiringHeat): Programme | null {
  const schedule = scheduleOf(record);
  if (!schedule || !found) return null;
  return { curve: drawn(found.curve, manyPoints), segments: segmentsInCelsius(schedule) };
}

function logOf({ log }: FiringHeat): FiringLogRead | null {
  if (!log || log.curve.length === 0) return null;
  return {
    curve: drawn(log.curve, manyPoints),
    taken: [...log.taken, ...log.notes.map(({ message }) => message)],
  };
}

/** The chart's slowest and fastest rates for cones that stand by themselves, and its middle one. */
const [slowest, middle, fastest] = [15, 60, 150];

/** Within so much of the chart's middle rate, its own values serve. */
const nearMiddle = 0.05;

/** The scale at the rate of the last 100 °C; at the chart's nearest where that lies beyond it. */
function coneScaleFor(rate: number | null): ConeScale {
  const within = Math.min(fastest, Math.max(slowest, rate ?? middle));
  const ratePerHour = Math.abs(within / middle - 1) <= nearMiddle ? middle : within;
  const steps = conesAtRate(ratePerHour).map(({ cone, celsius }) => ({
    cone,
    celsius: Math.round(celsius),
  }));
  return { ratePerHour, steps };
}

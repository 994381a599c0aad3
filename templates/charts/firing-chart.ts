/** Where everything of a firing's chart stands: a plain view, without markup. */
import { scaleLinear } from "d3-scale";
import type { CatalogueFiring } from "../../src/catalogue/kilns/firings.ts";
import type { ConeScale } from "../../src/catalogue/kilns/heat.ts";
import type { Curve } from "../../src/firing/curve.ts";
import { degreesIn, type TemperatureUnit } from "../../src/firing/units.ts";
import type { Cone } from "../../src/terms/cones.ts";
import { temperatureInWords } from "../words/firing/degrees.ts";
import {
  type CurvePaths,
  curvePaths,
  groundPath,
  minutesAt,
  peakOf,
  type Scales,
} from "./curve-shape.ts";

/** The plot is so many units wide, whatever that is on the screen, and so many pixels high. */
export const [plotWidth, plotHeight] = [1000, 336];

/** Something along the plot's lower edge, in per cent of its width. */
export interface AcrossMark {
  readonly x: number;
  readonly words: string;
}

/** Something along the plot's left or right edge, in pixels from its top. */
export interface UpMark {
  readonly y: number;
  readonly words: string;
}

/** Words beside a point: x in per cent, y in pixels; they begin there, or end there. */
export interface PointLabel extends AcrossMark, UpMark {
  readonly ends: boolean;
  /** True where they lie on the programme's ground. */
  readonly onGround?: boolean;
}

export interface FiringChart {
  readonly programme: (CurvePaths & { readonly ground: string }) | null;
  readonly log: CurvePaths | null;
  readonly hours: readonly AcrossMark[];
  readonly temperatures: readonly UpMark[];
  readonly cones: readonly (UpMark & { readonly named: boolean; readonly aim: boolean })[];
  /** The aim as a line across the plot. */
  readonly aim: UpMark | null;
  readonly labels: readonly PointLabel[];
}

/** The view of a firing's curves; null where there is none to draw. */
export function firingChart(firing: CatalogueFiring, unit: TemperatureUnit): FiringChart | null {
  const programme = drawable(firing.programme?.curve);
  const log = drawable(firing.log?.curve);
  const minutes = Math.max(lengthOf(programme), lengthOf(log));
  if (minutes === 0) return null;
  const aim = aimOf(firing);
  const top = Math.max(...[programme, log].map((curve) => hottestOf(curve)), aim?.celsius ?? 0);
  const x = scaleLinear([0, minutes], [0, plotWidth]);
  const y = scaleLinear([0, top + 70], [plotHeight, 0]);
  const scales: Scales = { x, y };
  return {
    programme: programme && {
      ...curvePaths(programme, scales),
      ground: groundPath(programme, scales),
    },
    log: log && curvePaths(log, scales),
    hours: hourMarks(minutes),
    temperatures: temperatureMarks(top, unit, y),
    cones: coneMarks(firing.coneScale, aim?.cone, top + 70, y),
    aim: aim && { y: y(aim.celsius), words: `the aim: cone ${aim.cone}` },
    labels: [...peakLabels(log ?? programme, unit, scales), ...curveNames(programme, log, scales)],
  };
}

function drawable(curve: Curve | undefined): Curve | null {
  return curve && curve.length > 1 ? curve : null;
}

function lengthOf(curve: Curve | null): number {
  return curve?.at(-1)?.minutes ?? 0;
}

function hottestOf(curve: Curve | null): number {
  return (curve && peakOf(curve)?.celsius) ?? 0;
}

/** The aim as a temperature: that of its cone on the scale beside the curves. */
function aimOf({ cone: aim, coneScale }: CatalogueFiring): { cone: Cone; celsius: number } | null {
  const step = coneScale.steps.find(({ cone }) => cone === aim);
  return step ? { cone: step.cone, celsius: step.celsius } : null;
}

const hourSteps = [0.25, 0.5, 1, 2, 4, 6, 8, 12, 24, 48, 96];

/** No more than seven marks, the last of which names the unit. */
function hourMarks(minutes: number): readonly AcrossMark[] {
  const hours = minutes / 60;
  const step = hourSteps.find((each) => hours / each <= 6.5) ?? Math.ceil(hours / 6);
  const count = Math.floor(hours / step) + 1;
  return Array.from({ length: count }, (_, i) => ({
    x: ((i * step) / hours) * 100,
    words: `${i * step}${i === count - 1 ? " h" : ""}`,
  }));
}

function temperatureMarks(
  top: number,
  unit: TemperatureUnit,
  y: (celsius: number) => number,
): readonly UpMark[] {
  const inUnit = scaleLinear([degreesIn(unit, 0), degreesIn(unit, top + 70)], [y(0), y(top + 70)]);
  const ticks = inUnit.ticks(6).filter((degrees) => degrees > degreesIn(unit, 0));
  return ticks.map((degrees) => ({
    y: inUnit(degrees),
    words: `${degrees}`,
  }));
}

/** So many pixels apart, names of cones can be read. */
const apart = 15;

/** Every cone has its mark; the aim has its name, and as many others as there is room for. */
function coneMarks(
  { steps }: ConeScale,
  aim: Cone | undefined,
  top: number,
  y: (celsius: number) => number,
): FiringChart["cones"] {
  const inside = steps.filter(({ celsius }) => celsius < top);
  const fromAim = inside.toSorted(
    (a, b) => Number(b.cone === aim) - Number(a.cone === aim) || b.celsius - a.celsius,
  );
  const named: number[] = [];
  for (const { celsius } of fromAim) {
    const here = y(celsius);
    if (named.every((other) => Math.abs(other - here) >= apart)) named.push(here);
  }
  return inside.map(({ cone, celsius }) => ({
    y: y(celsius),
    words: cone,
    named: named.includes(y(celsius)),
    aim: cone === aim,
  }));
}

function peakLabels(
  curve: Curve | null,
  unit: TemperatureUnit,
  { x, y }: Scales,
): readonly PointLabel[] {
  const peak = curve && peakOf(curve);
  if (!peak) return [];
  const across = inPerCent(x(peak.minutes));
  return [
    {
      x: across,
      y: y(peak.celsius) - 10,
      words: temperatureInWords(peak.celsius, unit),
      ends: across > 60,
    },
  ];
}

function inPerCent(x: number): number {
  return (x / plotWidth) * 100;
}

/** The programme's name lies on its own ground, the log's right of its fall. */
function curveNames(
  programme: Curve | null,
  log: Curve | null,
  { x, y }: Scales,
): readonly PointLabel[] {
  const middle = programme && inPerCent(x(lengthOf(programme))) * 0.62;
  return [
    ...(middle
      ? [{ x: middle, y: plotHeight - 12, words: "programme", ends: false, onGround: true }]
      : []),
    ...(log ? nameLog(log, { x, y }) : []),
  ];
}

/** A log that holds no cooling is named left of its climb. */
function nameLog(log: Curve, { x, y }: Scales): readonly PointLabel[] {
  const peak = peakOf(log);
  if (!peak) return [];
  const celsius = peak.celsius * 0.6;
  const falls = minutesAt(log, celsius, peak.minutes);
  const minutes = falls ?? minutesAt(log, celsius);
  if (minutes === undefined) return [];
  const at = inPerCent(x(minutes));
  return [{ x: at, y: y(celsius) - 6, words: "log", ends: falls === undefined || at > 85 }];
}

/** What a kiln did, reduced to what pages and data files show of it. */

import type { Account } from "../../firing/accounts.ts";
import { conesAtRate } from "../../firing/chart.ts";
import type { Curve } from "../../firing/curve.ts";
import { heatInWords } from "../../firing/heat.ts";
import { coneAtPlace } from "../../firing/heat-work.ts";
import { type FiringHeat, heatOf, scheduleOf } from "../../firing/of-record.ts";
import { openTimesInWords, programmeInWords } from "../../firing/programme.ts";
import type { Story } from "../../firing/story.ts";
import { thinCurve } from "../../firing/thin.ts";
import type { TemperatureUnit } from "../../firing/units.ts";
import type { Archive, Firing } from "../../records/archive.ts";
import type {
  CatalogueFiring,
  CatalogueHeat,
  FiringAccount,
  FiringLogRead,
  FiringStory,
  Programme,
} from "./firing-types.ts";
import { compareShelves } from "./shelves.ts";

/** What is shown of one firing's heat, on its own page and beside its tiles. */
export interface FiringView
  extends Pick<CatalogueFiring, "heat" | "programme" | "log" | "coneScale" | "story"> {
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
  { firings, studio }: Archive,
  heats: ReadonlyMap<string, FiringHeat>,
): ReadonlyMap<string, FiringView> {
  const unit = studio.temperature ?? "celsius";
  return new Map(
    [...firings].map(([key, firing]) => [
      key,
      viewFiring(firing, heats.get(key) ?? heatOf(firing.record), unit),
    ]),
  );
}

function viewFiring(firing: Firing, found: FiringHeat, unit: TemperatureUnit): FiringView {
  const curve = usableCurve(found.log?.curve) ?? usableCurve(found.schedule?.curve);
  return {
    firing,
    heat: heatFor(found),
    programme: programmeOf(firing, found, unit),
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
      reached: heatInWords(heat),
      rangeInCones: {
        low: coneAtPlace(heat.range.low),
        high: Number.isFinite(heat.range.high) ? coneAtPlace(heat.range.high) : null,
      },
    }
  );
}

function programmeOf(
  { record }: Firing,
  { schedule: found }: FiringHeat,
  unit: TemperatureUnit,
): Programme | null {
  const schedule = scheduleOf(record);
  if (!schedule || !found) return null;
  const other = unit === "celsius" ? "fahrenheit" : "celsius";
  return {
    curve: drawn(found.curve, manyPoints),
    sentences: programmeInWords(schedule, unit),
    inOtherUnit: programmeInWords(schedule, other),
    open: openTimesInWords(schedule, unit),
  };
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
function coneScaleFor(rate: number | null): CatalogueFiring["coneScale"] {
  const within = Math.min(fastest, Math.max(slowest, Math.round(rate ?? middle)));
  const ratePerHour = Math.abs(within / middle - 1) <= nearMiddle ? middle : within;
  const steps = conesAtRate(ratePerHour).map(({ cone, celsius }) => ({
    cone,
    celsius: Math.round(celsius),
  }));
  return { ratePerHour, steps };
}

function storyFor({ agreement, words, accounts, readings, comparisons }: Story): FiringStory {
  const apart = comparisons.filter(({ agrees, open }) => !agrees && !open);
  const open = comparisons.some((comparison) => comparison.open);
  return {
    agreement,
    accounts: accountsInOrder(accounts),
    readings,
    leftOpen: open && apart.length === 0 ? words : null,
    differences: apart
      .toSorted((a, b) => Math.abs(b.cones) - Math.abs(a.cones))
      .map(({ between, words }) => ({ between, words })),
    contradictions: accounts.contradictions.map(({ shelf, message }) => `${shelf}: ${message}`),
  };
}

function accountsInOrder(accounts: Story["accounts"]): readonly FiringAccount[] {
  const { aim, schedule, log, shelves } = accounts;
  const told = [
    { of: "aim", account: aim },
    { of: "programme", account: schedule },
    { of: "log", account: log },
  ] as const;
  return [
    ...told.flatMap(({ of, account }) =>
      account ? [{ of, shelf: null, ...stretchOf(account) }] : [],
    ),
    ...shelves
      .toSorted((a, b) => compareShelves(a.shelf, b.shelf))
      .map((account) => ({ of: "shelf" as const, shelf: account.shelf, ...stretchOf(account) })),
  ];
}

function stretchOf({ low, high, words, hold }: Account) {
  return { low, high, words, modelled: hold?.place ?? null };
}

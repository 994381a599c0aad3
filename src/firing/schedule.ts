/** A kiln's programme: where to, how fast, how long to stay. */
import type { Curve, CurvePoint } from "./curve.ts";
import { fahrenheitStepToCelsiusStep, fahrenheitToCelsius, type TemperatureUnit } from "./units.ts";

export interface Segment {
  /** The temperature to go to. */
  readonly to: number;
  /**
   * Degrees an hour, below 0 or not where the kiln cools. Left out: as fast as the kiln goes, or
   * cooling by itself.
   */
  readonly rate?: number | undefined;
  /** Minutes to stay there. */
  readonly hold?: number | undefined;
}

export interface Schedule {
  readonly segments: readonly Segment[];
  /** What the author said of the unit; °C where nothing was said. */
  readonly unit?: TemperatureUnit | undefined;
}

/** What is wrong with a schedule, or must be asked. */
export interface ScheduleFault {
  readonly code: "maybe-fahrenheit" | "rate-against-direction" | "rate-of-nothing";
  /** The segment's index, and its field. */
  readonly segment: number;
  readonly field: "to" | "rate";
  readonly message: string;
  readonly hint: string;
}

/** Where every schedule is taken to begin, in °C. */
export const roomTemperature = 20;

/** Hotter than any kiln of a pottery, in °C: cone 14 is down at 1365. */
const hottestLikely = 1400;

/** Everything about a schedule that keeps it from being reckoned with. */
export function findScheduleFaults(schedule: Schedule): readonly ScheduleFault[] {
  const room = toUnit(roomTemperature, schedule.unit);
  const faults = schedule.segments.flatMap((segment, i) =>
    findRateFaults(segment, schedule.segments[i - 1]?.to ?? room, i),
  );
  const hottest = schedule.unit ? -1 : schedule.segments.findIndex(({ to }) => to > hottestLikely);
  const found = schedule.segments[hottest];
  return found ? [maybeFahrenheit(found.to, hottest), ...faults] : faults;
}

/**
 * The curve a schedule asks for, in °C from room temperature. Segments whose rate is left out take
 * no time in it and are marked so: nobody knows how long they took.
 */
export function scheduleCurve(schedule: Schedule): Curve {
  const points: CurvePoint[] = [{ minutes: 0, celsius: roomTemperature }];
  let minutes = 0;
  let from = roomTemperature;
  for (const { to, rate, hold } of segmentsInCelsius(schedule)) {
    const climbs = to !== from;
    if (climbs && rate !== undefined) minutes += Math.abs((to - from) / rate) * 60;
    const untimed = climbs && rate === undefined;
    if (climbs) points.push({ minutes, celsius: to, ...(untimed ? { untimed } : {}) });
    if (hold) {
      minutes += hold;
      points.push({ minutes, celsius: to });
    }
    from = to;
  }
  return points;
}

/** A schedule's segments in °C and °C an hour. */
export function segmentsInCelsius(schedule: Schedule): readonly Segment[] {
  if (schedule.unit !== "fahrenheit") return schedule.segments;
  return schedule.segments.map(({ to, rate, hold }) => ({
    to: fahrenheitToCelsius(to),
    rate: rate === undefined ? undefined : fahrenheitStepToCelsiusStep(rate),
    hold,
  }));
}

function toUnit(celsius: number, unit: TemperatureUnit | undefined): number {
  return unit === "fahrenheit" ? celsius * 1.8 + 32 : celsius;
}

function maybeFahrenheit(to: number, segment: number): ScheduleFault {
  return {
    code: "maybe-fahrenheit",
    segment,
    field: "to",
    message: `The schedule goes to ${to}, which is hotter than a pottery kiln gets in °C. Is it in °F?`,
    hint: "Write “unit: F” beside the schedule if it is in °F, “unit: C” if it truly is in °C.",
  };
}

function findRateFaults({ to, rate }: Segment, from: number, segment: number): ScheduleFault[] {
  if (rate === undefined || to === from) return [];
  const where = { segment, field: "rate" } as const;
  if (rate === 0)
    return [
      {
        ...where,
        code: "rate-of-nothing",
        message: `At 0 degrees an hour the kiln never comes to ${to}.`,
        hint: "Leave the rate out where the kiln goes as fast as it can or cools by itself.",
      },
    ];
  if (rate < 0 && to > from)
    return [
      {
        ...where,
        code: "rate-against-direction",
        message: `From ${from} to ${to} the kiln heats, but the rate of ${rate} is one of cooling.`,
        hint: "Write the rate without its minus sign, or put the temperatures right.",
      },
    ];
  return [];
}

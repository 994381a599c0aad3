/** What the kiln did, from a firing's record and its log. */
import type { FiringRecord } from "../records/firing.ts";
import { remember } from "../terms/remember.ts";
import type { Curve } from "./curve.ts";
import { findHeat, type Heat } from "./heat.ts";
import type { LogReading } from "./log.ts";
import {
  findScheduleFaults,
  type Schedule,
  type ScheduleFault,
  scheduleCurve,
} from "./schedule.ts";
import { type Story, tellStory } from "./story.ts";
import type { TemperatureUnit } from "./units.ts";

export interface FiringHeat {
  /** From the log where there is one that can be used, else from the schedule; else null. */
  readonly heat: Heat | null;
  readonly heatFrom: "log" | "schedule" | null;
  /** Null where the record has no schedule. Faults leave its curve empty and its heat null. */
  readonly schedule: {
    readonly faults: readonly ScheduleFault[];
    readonly curve: Curve;
    readonly heat: Heat | null;
  } | null;
  /** Null where no log was given. */
  readonly log: (LogReading & { readonly heat: Heat | null }) | null;
  readonly story: Story;
}

/**
 * Reckons what a firing amounts to and whether its story holds.
 *
 * @param read what was read of the file that `log:` names, where there is one: see `of-archive.ts`
 */
export function heatOf(firing: FiringRecord, read?: LogReading): FiringHeat {
  const schedule = scheduleHeat(scheduleOf(firing));
  const log = read ? { ...read, heat: findHeat(read.curve) ?? null } : null;
  return {
    heat: log?.heat ?? schedule?.heat ?? null,
    heatFrom: log?.heat ? "log" : schedule?.heat ? "schedule" : null,
    schedule,
    log,
    story: tellStory({
      aim: firing.cone,
      witness: firing.witness,
      schedule: schedule?.heat ?? undefined,
      log: log?.heat ?? undefined,
    }),
  };
}

/** A record's schedule; undefined where it has none. */
export function scheduleOf({ schedule, unit }: FiringRecord): Schedule | undefined {
  return schedule && { segments: schedule, unit: unitOf(unit) };
}

/** A unit by the letter that a record has for it. */
export function unitOf(letter: "C" | "F" | undefined): TemperatureUnit | undefined {
  if (letter === undefined) return undefined;
  return letter === "F" ? "fahrenheit" : "celsius";
}

/** More programmes than a studio has: each is used for many firings, and takes milliseconds. */
const rememberedProgrammes = 200;

function scheduleHeat(schedule: Schedule | undefined): FiringHeat["schedule"] {
  return schedule ? heatOfProgramme(schedule) : null;
}

const heatOfProgramme = remember(rememberedProgrammes, reckonProgramme, ({ segments, unit }) =>
  [unit, ...segments.map(({ to, rate, hold }) => `${to} ${rate} ${hold}`)].join(),
);

function reckonProgramme(schedule: Schedule): FiringHeat["schedule"] {
  const faults = findScheduleFaults(schedule);
  if (faults.length > 0) return { faults, curve: [], heat: null };
  const curve = scheduleCurve(schedule);
  return { faults, curve, heat: findHeat(curve) ?? null };
}

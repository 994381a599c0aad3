/** What the accounts of a firing say of one another, for the rules that ask about them. */

import { comparisonWords } from "../../templates/words/firing/accounts.ts";
import type { Comparison } from "../firing/comparisons.ts";
import { celsiusAtPlace } from "../firing/degrees.ts";
import type { LikelyReading } from "../firing/readings.ts";
import type { Story } from "../firing/story.ts";
import type { Firing } from "../records/archive.ts";
import type { FieldPath } from "../records/problem.ts";
import { idKey } from "../terms/ids.ts";
import type { Extra } from "./check.ts";
import { dangerousDegrees } from "./danger.ts";

export function storyOf(extra: Extra, firing: Firing): Story | undefined {
  return extra.heats.get(idKey(firing.id))?.story;
}

/** Whether the kiln has not been lit, as far as the record tells. */
export function isToCome({ record: { on, witness }, log }: Firing): boolean {
  return on === undefined && witness === undefined && log === null;
}

/** A programme that is far too hot. */
export interface TooHot {
  /** By how many °C. */
  readonly degrees: number;
  /** Its aim and its programme. */
  readonly said: Comparison;
}

/**
 * Whether the programme of a firing still to come is far too hot for its aim. Only the climb
 * counts: how much a hold adds is not known well enough to stop anyone.
 */
export function findTooHot(extra: Extra, firing: Firing): TooHot | undefined {
  const said = storyOf(extra, firing)?.comparisons.find((one) => one.between === "aim-schedule");
  const [aim, schedule] = said?.accounts ?? [];
  if (!isToCome(firing) || !said || !aim || !schedule?.hold) return undefined;
  const degrees = celsiusAtPlace(schedule.hold.unheld.low) - celsiusAtPlace(aim.high);
  return degrees >= dangerousDegrees ? { degrees, said } : undefined;
}

/** The reading by which a cone was taken for its double, 06 for 6 or 6 for 06. */
export function findDoubleReading({ readings }: Story): LikelyReading | undefined {
  return readings.find(({ code }) => doubles.has(code));
}

const doubles: ReadonlySet<LikelyReading["code"]> = new Set([
  "double-fired",
  "double-written",
  "wrong-log",
]);

/** That accounts do not agree, and which lie furthest apart: a message, so without a full stop. */
export function disagreementOf({ widest }: Story): string {
  const apart = widest ? ` ${comparisonWords(widest)}` : "";
  return `The records of this firing do not agree.${apart}`;
}

/** The field that the widest difference of a story leads to. */
export function placeOfDifference({ widest }: Story): FieldPath {
  switch (widest?.between) {
    case "aim-schedule":
      return ["schedule"];
    case "aim-log":
    case "schedule-log":
      return ["log"];
    default:
      return ["witness"];
  }
}

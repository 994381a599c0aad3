/** The accounts of a firing side by side, and what may be behind their differences, in words. */
import type { Comparison } from "../../../src/firing/comparisons.ts";
import type { LikelyReading } from "../../../src/firing/readings.ts";
import type { LeftOpen } from "../../../src/firing/story.ts";
import { minutesInWords } from "../../../src/firing/units.ts";
import { accountWords } from "./cones.ts";

/** Two accounts, without a full stop: `Aimed at cone 6; the log works out at just over cone 6`. */
export function comparisonWords(comparison: Pick<Comparison, "accounts" | "between">): string {
  const [first, second] = comparison.accounts;
  const [one, other] = [accountWords(first), accountWords(second)];
  switch (comparison.between) {
    case "aim-witness":
      return `Aimed at ${one}; the witness cones show ${other}${onShelf(second)}`;
    case "aim-log":
      return `Aimed at ${one}; the log works out at ${other}`;
    case "aim-schedule":
      return `Aimed at ${one}; the programme works out at ${other}`;
    case "log-witness":
      return `The log works out at ${one}; the witness cones show ${other}`;
    case "schedule-log":
      return `The programme works out at ${one}; the log at ${other}`;
    case "shelves":
      return `The hottest shelf${onShelf(first)} shows ${one}, the coolest${onShelf(second)} ${other}`;
  }
}

function onShelf(account: Comparison["accounts"][number]): string {
  return "shelf" in account ? ` (${account.shelf})` : "";
}

/** What a hold leaves open, and what decides. */
export function leftOpenWords({ comparison, minutes }: LeftOpen): string {
  return `${comparisonWords(comparison)}. How much a hold of ${minutesInWords(minutes)} adds is not known well enough to say whether they agree: go by the witness cones.`;
}

/** What may be behind a difference, and what to do about it. */
export function readingWords(reading: LikelyReading): string {
  switch (reading.code) {
    case "double-fired":
      return `The kiln was fired to ${accountWords(reading.double)} instead of ${accountWords(reading.aim)}, or one was written for the other. Check the programme first.`;
    case "double-written":
      return `The witness cones showed ${accountWords(reading.aim)} and were written down as ${accountWords(reading.double)}: the kiln itself fired as planned.`;
    case "wrong-log":
      return `The log or programme is from another firing: it is one for ${accountWords(reading.double)}, but the witness cones show ${accountWords(reading.aim)}.`;
    case "uneven":
      return "The kiln fired unevenly. Look at how the load was stacked, at the elements or burners, and at where the thermocouple sits.";
    case "thermocouple-drifted":
      return `A thermocouple that has drifted: ${drift[reading.reads]}. Compare it with a new one, and trust the cones until then.`;
    case "programme-not-followed":
      return notFollowed[reading.way];
    case "long-hold":
      return `The hold: without it the climb would be right. Held ${minutesInWords(reading.minutes)}, it works out at ${accountWords(reading.account)}. Shorten the hold, or lower the peak, and check with witness cones.`;
    case "wrong-programme":
      return wrongProgrammeWords(reading);
    case "cones-misread":
      return "The witness cones were misread, or mixed up when they were set: look at the pack again, and at the numbers pressed into it.";
    case "adds-up":
      return "No one thing: each is within a cone of the next, and together they add up. The kiln runs a little hot or cool for this aim.";
  }
}

const drift = {
  high: "it reads high, so the kiln stayed cooler than it shows",
  low: "it reads low, so the kiln got hotter than it shows",
} as const;

const notFollowed = {
  beyond: "The kiln went beyond its programme: a relay that stuck, or heat added by hand.",
  short:
    "The kiln fell short of its programme: a power cut, worn elements, too little gas, or a firing stopped early.",
} as const;

function wrongProgrammeWords({
  aim,
  schedule,
  isHotter,
}: Extract<LikelyReading, { readonly code: "wrong-programme" }>): string {
  if (schedule)
    return `The wrong programme: it works out at ${accountWords(schedule)}, not ${accountWords(aim)}.`;
  return `The wrong programme, or the right one ${isHotter ? `left to run too long: the kiln went past ${accountWords(aim)}` : `stopped early: the kiln did not reach ${accountWords(aim)}`}.`;
}

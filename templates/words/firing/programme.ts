/** A programme as sentences. */
import { roomTemperature } from "../../../src/firing/schedule.ts";
import {
  celsiusStepToFahrenheitStep,
  minutesInWords,
  type TemperatureUnit,
} from "../../../src/firing/units.ts";
import type { Segment } from "../../../src/records/firing.ts";
import { temperatureInWords } from "./degrees.ts";

/**
 * A schedule, a sentence a segment, without full stops: `60° an hour to 1215 °C, hold 15 minutes`.
 *
 * @param segments in °C
 * @param unit the unit to say it in, whichever it was written in
 */
export function programmeSentences(
  segments: readonly Segment[],
  unit: TemperatureUnit,
): readonly string[] {
  return segments.map((segment, i) =>
    segmentWords(segment, segments[i - 1]?.to ?? roomTemperature, unit),
  );
}

/**
 * What a schedule leaves open, a sentence each: segments without a rate take a time that nobody
 * knows, and are counted as taking none.
 */
export function openTimeSentences(
  segments: readonly Segment[],
  unit: TemperatureUnit,
): readonly string[] {
  return segments.flatMap(({ to, rate }, i) => {
    const from = segments[i - 1]?.to ?? roomTemperature;
    if (rate !== undefined || to === from) return [];
    const temperature = temperatureInWords(to, unit);
    return [
      to > from
        ? `How fast the kiln climbs to ${temperature} is not said: that climb counts as no time at all`
        : `How fast the kiln cools to ${temperature} is not said: that cooling counts as no time at all`,
    ];
  });
}

function segmentWords({ to, rate, hold }: Segment, from: number, unit: TemperatureUnit): string {
  const temperature = temperatureInWords(to, unit);
  if (to === from) return `Hold ${temperature}${hold ? ` for ${minutesInWords(hold)}` : ""}`;
  const held = hold ? `, hold ${minutesInWords(hold)}` : "";
  return `${wayWords(rate, to > from, unit)} to ${temperature}${held}`;
}

function wayWords(rate: number | undefined, heats: boolean, unit: TemperatureUnit): string {
  if (rate === undefined) return heats ? "As fast as the kiln goes" : "Left to cool by itself";
  const degrees = Math.abs(unit === "celsius" ? rate : celsiusStepToFahrenheitStep(rate));
  return `${heats ? "" : "Cooling at "}${Math.round(degrees)}° an hour`;
}

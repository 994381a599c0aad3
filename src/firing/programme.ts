/** A schedule as sentences. */
import { roomTemperature, type Schedule, type Segment, segmentsInCelsius } from "./schedule.ts";
import { celsiusStepToFahrenheitStep, type TemperatureUnit, temperatureInWords } from "./units.ts";

/**
 * Says a schedule in words, a sentence a segment, without full stops: `60° an hour to 1215 °C,
 * hold 15 minutes`.
 *
 * @param unit the unit to say it in, whichever it was written in
 */
export function programmeInWords(schedule: Schedule, unit: TemperatureUnit): readonly string[] {
  const segments = segmentsInCelsius(schedule);
  return segments.map((segment, i) =>
    segmentInWords(segment, segments[i - 1]?.to ?? roomTemperature, unit),
  );
}

/**
 * Says what a schedule leaves open, a sentence each: segments without a rate take a time that
 * nobody knows, and are counted as taking none.
 */
export function openTimesInWords(schedule: Schedule, unit: TemperatureUnit): readonly string[] {
  const segments = segmentsInCelsius(schedule);
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

/** Minutes as words: `15 minutes`, `1 hour`, `2 hours 30 minutes`. */
export function minutesInWords(minutes: number): string {
  const whole = Math.round(minutes);
  const hours = Math.floor(whole / 60);
  const rest = whole % 60;
  const parts = [
    hours > 0 ? `${hours} ${hours === 1 ? "hour" : "hours"}` : "",
    rest > 0 || hours === 0 ? `${rest} ${rest === 1 ? "minute" : "minutes"}` : "",
  ];
  return parts.filter((part) => part !== "").join(" ");
}

function segmentInWords({ to, rate, hold }: Segment, from: number, unit: TemperatureUnit): string {
  const temperature = temperatureInWords(to, unit);
  if (to === from) return `Hold ${temperature}${hold ? ` for ${minutesInWords(hold)}` : ""}`;
  const held = hold ? `, hold ${minutesInWords(hold)}` : "";
  return `${wayInWords(rate, to > from, unit)} to ${temperature}${held}`;
}

function wayInWords(rate: number | undefined, heats: boolean, unit: TemperatureUnit): string {
  if (rate === undefined) return heats ? "As fast as the kiln goes" : "Left to cool by itself";
  const degrees = Math.abs(unit === "celsius" ? rate : celsiusStepToFahrenheitStep(rate));
  return `${heats ? "" : "Cooling at "}${Math.round(degrees)}° an hour`;
}

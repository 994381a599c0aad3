/** How heat beyond a range is put into words. */
import { coneRangeWords } from "../../templates/words/firing/cones.ts";
import { celsiusStepToFahrenheitStep } from "../firing/units.ts";
import type { Heat, HotFiring, Subject } from "./heat.ts";

/** `1 cone`, `8 cones`, `2½ cones`, `half a cone`: how far apart two cones lie, without sign. */
export function coneSteps(distance: number): string {
  const whole = Math.floor(Math.abs(distance));
  const half = Math.abs(distance) > whole;
  if (whole === 0 && half) return "half a cone";
  const count = `${whole}${half ? "½" : ""}`;
  return count === "1" ? "1 cone" : `${count} cones`;
}

/** `about 60 °C (110 °F)`: degrees between cones, to the nearest five, without sign. */
export function degreesInWords(celsius: number): string {
  const five = (degrees: number) => Math.max(5, Math.round(Math.abs(degrees) / 5) * 5);
  return `about ${five(celsius)} °C (${five(celsiusStepToFahrenheitStep(celsius))} °F)`;
}

/**
 * `glaze Soot is for cones 5–6`; a reclaimed clay says what it counts as. The clay that it counts as is not
 * named: pages say this too, and that clay may be one that only an unlisted set has.
 */
export function rangeInWords(subject: Subject): string {
  const range = coneRangeWords(subject.range);
  const { kind, name, countsAs } = subject;
  if (countsAs === null || countsAs === name)
    return `${countsAs === null ? "" : "reclaimed "}${kind} ${name} is for ${range}`;
  return `reclaimed ${kind} ${name} counts as the lowest-firing clay of the studio, which is for ${range}`;
}

/** `firing g-1020 is aimed at cone 6`, or what its witness cones show. */
export function heatInWords(hot: HotFiring): string {
  return hot.told === "aim"
    ? `firing ${hot.firing.id} is aimed at cone ${hot.cone}`
    : `the witness cones of firing ${hot.firing.id} show cone ${hot.cone}`;
}

/** The range, the firing and how far they lie apart, to stand after “its” or a full stop. */
export function outsideInWords(heat: Heat): string {
  const side = heat.outside > 0 ? "hotter" : "cooler";
  return `${rangeInWords(heat.subject)}, and ${heatInWords(heat)}: ${coneSteps(heat.outside)} ${side}, ${degreesInWords(heat.degrees)}`;
}

/**
 * Cones in degrees. Their steps are unequal (1 to 2 are 5 °C apart, 6 to 7 some 17), so that how
 * far off is how dangerous is told in degrees: those between the cones at 60 °C an hour.
 */
import type { Cone } from "../terms/cones.ts";
import { coneKinetics, modelledTemperature, referenceRate } from "./kinetics.ts";
import { placeOfCone } from "./place.ts";

interface Mark {
  readonly place: number;
  readonly celsius: number;
}

/** Every charted cone, coolest first. */
const marks: readonly Mark[] = coneKinetics.map((fit) => ({
  place: placeOfCone(fit.cone),
  celsius: modelledTemperature(fit, referenceRate),
}));

/** Where a place on the line of cones lies in °C, at 60 °C an hour. Beyond the ends it runs on. */
export function celsiusAtPlace(place: number): number {
  return between(place, "place", "celsius");
}

/** The place on the line of cones of a temperature in °C, at 60 °C an hour. */
export function placeAtCelsius(celsius: number): number {
  return between(celsius, "celsius", "place");
}

/** How many °C hotter `a` is than `b`, below 0 where it is cooler. */
export function degreesHotter(a: Cone, b: Cone): number {
  return celsiusAtPlace(placeOfCone(a)) - celsiusAtPlace(placeOfCone(b));
}

function between(value: number, from: keyof Mark, to: keyof Mark): number {
  if (!Number.isFinite(value)) return value;
  const found = marks.findIndex((mark) => mark[from] >= value);
  const upper = found < 0 ? marks.length - 1 : Math.max(found, 1);
  const [low, high] = [marks[upper - 1], marks[upper]];
  if (!low || !high) return Number.NaN;
  const share = (value - low[from]) / (high[from] - low[from]);
  return low[to] + share * (high[to] - low[to]);
}

/** Cones as places on a line, so that how far two of them lie apart can be told in cones. */
import { type Cone, chartedCones, conesHotter, parseCone } from "../terms/cones.ts";

const zero = chartedCones.find((cone) => cone === "1") as Cone;

/** A cone's place: 06 at −6, 01 at −1, 1 at 0, 6 at 5; whole neighbours lie one apart. */
export function placeOfCone(cone: Cone): number {
  return conesHotter(cone, zero);
}

/** The whole or half cone that lies at a place. */
export function findConeAt(place: number): Cone | undefined {
  const whole = Math.trunc(place);
  const half = place === whole ? "" : Math.abs(place - whole) === 0.5 ? "½" : undefined;
  if (half === undefined) return undefined;
  const name = place < 0 ? `0${-whole}${half}` : `${whole + 1}${half}`;
  const reading = parseCone(name, "any");
  return reading.ok ? reading.cone : undefined;
}

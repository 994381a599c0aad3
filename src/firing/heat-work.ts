/**
 * Heat work: which cone a curve of temperature over time amounts to.
 *
 * Each cone's rate of softening is summed over the curve (see kinetics.ts). A step of the curve
 * of more than 2 °C is cut into equal parts of at most 2 °C, however long it lasts; within a part
 * the logarithm of the rate runs as good as straight, and the integral of such a part is exact:
 * its length times the logarithmic mean of the rates at its ends. So a hold of any length is one
 * part, a sample every second costs no more than it must, and the error stays below 0.001 °C.
 */
import type { Cone } from "../terms/cones.ts";
import { type Curve, findPeak } from "./curve.ts";
import {
  type ConeKinetics,
  coneKinetics,
  degreesPerLogOfRate,
  iceInKelvin,
  modelledTemperature,
  referenceRate,
} from "./kinetics.ts";
import { placeOfCone } from "./place.ts";

/** A firing in cones: the hottest cone that is down, the next one, and how far towards it. */
export interface EquivalentCone {
  /** Null where not even the coolest cone is down. */
  readonly cone: Cone | null;
  /** Null where the hottest cone is down: the model ends there. */
  readonly next: Cone | null;
  /** From 0 to 1, in proportion to the degrees between the two at 60 °C an hour. */
  readonly fraction: number;
}

const largestPart = 2;

/**
 * The equivalent cone of a curve: every minute counts, those of cooling too. Steps whose time is
 * not known count as no time at all.
 */
export function equivalentConeOf(curve: Curve): EquivalentCone {
  return coneReached(degreesPast(softening(curve)));
}

/** An equivalent cone's place on the line of cones; null where it is cooler than every cone. */
export function placeOfEquivalentCone(found: EquivalentCone): number | null {
  if (!found.cone) return null;
  const place = placeOfCone(found.cone);
  return found.next ? place + found.fraction * (placeOfCone(found.next) - place) : place;
}

/** A place on the line of cones as an equivalent cone. */
export function coneAtPlace(place: number): EquivalentCone {
  const after = coneKinetics.findIndex((fit) => placeOfCone(fit.cone) > place);
  const cone = coneKinetics.at(after < 0 ? -1 : after - 1)?.cone ?? null;
  const next = coneKinetics[after]?.cone ?? null;
  if (after === 0) return { cone: null, next, fraction: 0 };
  if (!cone || !next) return { cone, next, fraction: 0 };
  const from = placeOfCone(cone);
  return { cone, next, fraction: (place - from) / (placeOfCone(next) - from) };
}

/**
 * How many minutes at its peak would do as much as a curve does beyond another one, by the model
 * and for the cone that the other one reached.
 */
export function minutesAtPeak(curve: Curve, without: Curve): number {
  const peak = findPeak(curve);
  const bare = softening(without);
  const reached = Math.max(0, conesDown(degreesPast(bare)) - 1);
  const cone = coneKinetics[reached];
  if (!peak || !cone) return 0;
  const perHour = Math.exp(-cone.lnThreshold - cone.kelvin / (peak.celsius + iceInKelvin));
  const beyond = (softening(curve)[reached] ?? 0) - (bare[reached] ?? 0);
  return perHour > 0 ? Math.max(0, (beyond / perHour) * 60) : 0;
}

/** How much of what it takes to bring it down each cone has had, coolest first: 1 is down. */
function softening(curve: Curve): Float64Array {
  const sums = new Float64Array(coneKinetics.length);
  const rates = new Rates(coneKinetics);
  let before = curve[0];
  if (before) rates.moveTo(before.celsius);
  for (const point of curve) {
    if (!before) break;
    const hours = (point.minutes - before.minutes) / 60;
    if (hours <= 0) rates.moveTo(point.celsius);
    else {
      const climb = point.celsius - before.celsius;
      const parts = Math.max(1, Math.ceil(Math.abs(climb) / largestPart));
      for (let part = 1; part <= parts; part += 1) {
        rates.moveTo(before.celsius + (climb * part) / parts);
        rates.addPart(sums, hours / parts);
      }
    }
    before = point;
  }
  return sums;
}

/** The rates of softening of all cones at the temperature before and at this one, per hour. */
class Rates {
  readonly #cones: readonly ConeKinetics[];
  #lnBefore: Float64Array;
  #before: Float64Array;
  #lnNow: Float64Array;
  #now: Float64Array;

  constructor(cones: readonly ConeKinetics[]) {
    this.#cones = cones;
    this.#lnBefore = new Float64Array(cones.length);
    this.#before = new Float64Array(cones.length);
    this.#lnNow = new Float64Array(cones.length);
    this.#now = new Float64Array(cones.length);
  }

  moveTo(celsius: number): void {
    [this.#lnBefore, this.#lnNow] = [this.#lnNow, this.#lnBefore];
    [this.#before, this.#now] = [this.#now, this.#before];
    const perKelvin = 1 / (celsius + iceInKelvin);
    this.#cones.forEach((cone, i) => {
      const ln = -cone.lnThreshold - cone.kelvin * perKelvin;
      this.#lnNow[i] = ln;
      this.#now[i] = Math.exp(ln);
    });
  }

  /** Adds a part that led from the temperature before to this one. */
  addPart(sums: Float64Array, hours: number): void {
    for (let i = 0; i < sums.length; i += 1) {
      const [before = 0, now = 0] = [this.#before[i], this.#now[i]];
      const ln = (this.#lnNow[i] ?? 0) - (this.#lnBefore[i] ?? 0);
      const mean = Math.abs(ln) < 1e-6 ? (before + now) / 2 : (now - before) / ln;
      sums[i] = (sums[i] ?? 0) + hours * mean;
    }
  }
}

/** The least softening that is told from none; its logarithm keeps all that follows finite. */
const least = 1e-200;

/** How many degrees past its end point each cone is, were it climbing at the reference rate. */
function degreesPast(sums: Float64Array): number[] {
  return coneKinetics.map(
    (cone, i) => degreesPerLogOfRate(cone) * Math.log(Math.max(sums[i] ?? 0, least)),
  );
}

/** Finds the pair of neighbours of which one is past its end point and the other is not. */
function coneReached(past: readonly number[]): EquivalentCone {
  const ordered = keepInOrder(past);
  const count = ordered.filter((degrees) => degrees >= 0).length;
  const cone = coneKinetics[count - 1]?.cone ?? null;
  const next = coneKinetics[count]?.cone ?? null;
  const [reached = 0, missing = 0] = [ordered[count - 1], ordered[count]];
  const fraction = cone && next ? reached / (reached - missing) : 0;
  return { cone, next, fraction };
}

function conesDown(past: readonly number[]): number {
  return keepInOrder(past).filter((degrees) => degrees >= 0).length;
}

/**
 * Keeps the cones in their order. Each is fitted by itself, so that in firings far from the
 * chart's rates (a hold of many hours, a climb in minutes) a cone can seem to fall before its
 * cooler neighbour. Such neighbours share the mean of what they say (least squares under the
 * constraint, by pooling adjacent violators), and at least a quarter of the degrees that part
 * them at the reference rate is kept between them. Hotter, slower or longer still never lowers
 * any of the values.
 */
function keepInOrder(past: readonly number[]): number[] {
  const pools: { sum: number; size: number }[] = [];
  past.forEach((degrees, i) => {
    let pool = { sum: degrees + (leastGaps[i] ?? 0), size: 1 };
    for (let last = pools.at(-1); last && isCooler(last, pool); last = pools.at(-1)) {
      pools.pop();
      pool = { sum: last.sum + pool.sum, size: last.size + pool.size };
    }
    pools.push(pool);
  });
  return pools
    .flatMap((pool) => Array.from({ length: pool.size }, () => pool.sum / pool.size))
    .map((degrees, i) => degrees - (leastGaps[i] ?? 0));
}

function isCooler(a: { sum: number; size: number }, b: { sum: number; size: number }): boolean {
  return a.sum * b.size < b.sum * a.size;
}

/** For every cone, the sum of the least gaps between its cooler neighbours up to itself, in °C. */
const leastGaps: readonly number[] = coneKinetics.map((cone) => {
  const coolest = coneKinetics[0] ?? cone;
  return (
    (modelledTemperature(cone, referenceRate) - modelledTemperature(coolest, referenceRate)) / 4
  );
});

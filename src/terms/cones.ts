/**
 * Pyrometric cones: names, order and ranges. Cones are names, not numbers: `06` is some 220 °C
 * cooler than `6`, so text is never turned into a number and back.
 */

declare const coneName: unique symbol;

/** A cone's canonical name: `06`, `6`, `05½`, `5½`. Made by `parseCone` alone. */
export type Cone = string & { readonly [coneName]: true };

/** Two cones, the cooler first; the same cone twice where only one is meant. */
export interface ConeRange {
  readonly from: Cone;
  readonly to: Cone;
}

/** Which half cones may be named: those a chart gives, or any, as a witness may be read. */
export type HalfCones = "charted" | "any";

export type ConeReading =
  | { readonly ok: true; readonly cone: Cone }
  | { readonly ok: false; readonly nearest: readonly Cone[] };

export type ConeRangeReading =
  | { readonly ok: true; readonly range: ConeRange }
  | { readonly ok: false; readonly nearest: readonly Cone[] };

const coolest = 22;
const hottest = 14;

/** Every cone of the current self-supporting and large charts, coolest first. */
export const chartedCones: readonly Cone[] = allCharted();

function allCharted(): Cone[] {
  const names: string[] = [];
  for (let n = coolest; n >= 1; n -= 1) {
    if (n === 5) names.push("05½");
    names.push(`0${n}`);
  }
  for (let n = 1; n <= hottest; n += 1) {
    names.push(`${n}`);
    if (n === 5) names.push("5½");
  }
  return names as Cone[];
}

const written = /^(0?)([1-9]\d?)(½|[.,]5| ?1\/2)?$/u;

/**
 * Reads a cone's name as potters write it: `06`, `6`, `5½`, `5.5`, `5,5`, `5 1/2`, `05.5`.
 *
 * @param text what was written
 * @param halves the half cones allowed: a chart has only 05½ and 5½
 * @returns the cone, or the nearest charted cones where there is none of that name
 */
export function parseCone(text: string, halves: HalfCones = "charted"): ConeReading {
  const match = written.exec(text.trim());
  if (!match) return { ok: false, nearest: nearestCones(text) };
  const [, zero = "", digits = "", half] = match;
  const cone = `${zero}${digits}${half ? "½" : ""}` as Cone;
  const limit = zero ? coolest : hottest;
  const whole = Number(digits);
  const exists = half
    ? halves === "any"
      ? whole < limit
      : chartedCones.includes(cone)
    : whole <= limit;
  return exists ? { ok: true, cone } : { ok: false, nearest: nearestTo(position(cone)) };
}

/**
 * Reads a cone or a range, either way round: `6`, `5-6`, `06–04`, `01-1`, `04 to 06`.
 *
 * @returns the range, the cooler cone first
 */
export function parseConeRange(text: string): ConeRangeReading {
  const parts = text.split(/-|–|—|\bto\b/u);
  if (parts.length > 2) return { ok: false, nearest: nearestCones(text) };
  const readings = parts.map((part) => parseCone(part));
  const cones: Cone[] = [];
  for (const reading of readings) {
    if (!reading.ok) return reading;
    cones.push(reading.cone);
  }
  cones.sort(compareCones);
  const from = cones[0];
  const to = cones[cones.length - 1];
  if (!from || !to) return { ok: false, nearest: [] };
  return { ok: true, range: { from, to } };
}

/** Sorts cones from cool to hot. */
export function compareCones(a: Cone, b: Cone): number {
  return position(a) - position(b);
}

/**
 * How many cones hotter `a` is than `b`, whole cones counting one and half cones a half;
 * negative where it is cooler. From 06 to 6 it is eleven: 05, 04, 03, 02, 01, 1, 2, 3, 4, 5, 6.
 */
export function conesHotter(a: Cone, b: Cone): number {
  return position(a) - position(b);
}

/** How many cones `cone` lies above the range (positive), below it (negative) or 0 inside it. */
export function conesOutside(cone: Cone, range: ConeRange): number {
  if (compareCones(cone, range.to) > 0) return conesHotter(cone, range.to);
  if (compareCones(cone, range.from) < 0) return conesHotter(cone, range.from);
  return 0;
}

/** The hottest of some cones. */
export function findHottest(cones: readonly Cone[]): Cone | undefined {
  return cones.reduce<Cone | undefined>(
    (best, cone) => (best === undefined || compareCones(cone, best) > 0 ? cone : best),
    undefined,
  );
}

/** A range as a potter writes it: `6`, `5–6`. */
export function formatConeRange(range: ConeRange): string {
  return range.from === range.to ? range.from : `${range.from}–${range.to}`;
}

/**
 * A cone as part of a file name or an address: `06`, `6`, `05-half`.
 */
export function coneSlug(cone: Cone): string {
  return cone.replace("½", "-half");
}

/**
 * Places on a line on which neighbouring whole cones lie one apart: 01 at −1, 1 at 0, so that
 * nothing lies between them. A half of the 0-series lies on its cooler side (05½ between 06 and
 * 05), a half of the others on its hotter side (5½ between 5 and 6).
 */
function position(cone: Cone): number {
  const half = cone.endsWith("½") ? 0.5 : 0;
  const digits = Number.parseInt(cone, 10);
  return cone.startsWith("0") ? -(digits + half) : digits - 1 + half;
}

function nearestCones(text: string): readonly Cone[] {
  const match = /(0{0,9})(\d{1,3})(?:[.,½]|\b)/u.exec(text.slice(0, 40));
  if (!match) return [];
  const [, zeros = "", digits = ""] = match;
  const whole = Number(digits);
  if (whole === 0) return nearestTo(-0.5);
  return nearestTo(zeros ? -whole : whole - 1);
}

function nearestTo(place: number): readonly Cone[] {
  const byDistance = [...chartedCones].sort(
    (a, b) => Math.abs(position(a) - place) - Math.abs(position(b) - place),
  );
  return byDistance.slice(0, 2).sort(compareCones);
}

/** Temperature over time: what a schedule asks for or a log has recorded. */

export interface CurvePoint {
  /** Minutes since the beginning; never fewer than at the point before. */
  readonly minutes: number;
  readonly celsius: number;
  /** True where nobody knows how long it took to come here from the point before. */
  readonly untimed?: boolean;
}

/** Between its points a curve runs straight. */
export type Curve = readonly CurvePoint[];

/** The curve's hottest point, the first of several; undefined for an empty curve. */
export function findPeak(curve: Curve): CurvePoint | undefined {
  let peak = curve[0];
  for (const point of curve) if (peak && point.celsius > peak.celsius) peak = point;
  return peak;
}

/** One crossing of a temperature, with the index of the point that follows it. */
export interface Crossing {
  readonly minutes: number;
  readonly index: number;
}

/** The last time before `index` that the curve climbs through a temperature. */
export function findLastClimb(curve: Curve, celsius: number, index: number): Crossing | undefined {
  for (let i = index; i > 0; i -= 1) {
    const [from, to] = [curve[i - 1], curve[i]];
    if (from && to && from.celsius < celsius && to.celsius >= celsius)
      return { minutes: crossingMinutes(from, to, celsius), index: i };
  }
  return undefined;
}

/** The first time from `index` on that the curve falls through a temperature. */
export function findFirstFall(curve: Curve, celsius: number, index: number): Crossing | undefined {
  for (let i = Math.max(index, 1); i < curve.length; i += 1) {
    const [from, to] = [curve[i - 1], curve[i]];
    if (from && to && from.celsius >= celsius && to.celsius < celsius)
      return { minutes: crossingMinutes(from, to, celsius), index: i };
  }
  return undefined;
}

/** Whether every step between two points is timed; the step that leads to `first` counts too. */
export function isTimed(curve: Curve, first: number, last: number): boolean {
  for (let i = first; i <= last; i += 1) if (curve[i]?.untimed) return false;
  return true;
}

function crossingMinutes(from: CurvePoint, to: CurvePoint, celsius: number): number {
  const share = (celsius - from.celsius) / (to.celsius - from.celsius);
  return from.minutes + share * (to.minutes - from.minutes);
}

/** A curve of temperature over time as the paths of a drawing. */
import { area, line } from "d3-shape";
import type { Curve, CurvePoint } from "../../src/firing/curve.ts";

/** From minutes and °C to where they stand in a drawing. */
export interface Scales {
  readonly x: (minutes: number) => number;
  readonly y: (celsius: number) => number;
}

/** What is known of a curve, and the steps of which nobody knows how long they took. */
export interface CurvePaths {
  readonly timed: string;
  /** Empty where every step has its time. */
  readonly untimed: string;
}

/** The paths of a curve; both may be drawn, the untimed one broken. */
export function curvePaths(curve: Curve, { x, y }: Scales): CurvePaths {
  const path = line<CurvePoint>()
    .x((point) => x(point.minutes))
    .y((point) => y(point.celsius))
    .digits(1);
  const runs = runsOf(curve);
  const joined = (untimed: boolean) =>
    runs
      .filter((run) => run.untimed === untimed)
      .map((run) => path(run.points) ?? "")
      .join("");
  return { timed: joined(false), untimed: joined(true) };
}

/** The ground beneath a curve. */
export function groundPath(curve: Curve, { x, y }: Scales): string {
  const ground = area<CurvePoint>()
    .x((point) => x(point.minutes))
    .y0(y(0))
    .y1((point) => y(point.celsius))
    .digits(1);
  return ground([...curve]) ?? "";
}

interface Run {
  readonly untimed: boolean;
  readonly points: CurvePoint[];
}

/** Pieces of a curve that are all timed or all untimed; each begins where the last one ends. */
function runsOf(curve: Curve): readonly Run[] {
  const runs: Run[] = [];
  curve.forEach((point, i) => {
    const before = curve[i - 1];
    if (!before) return;
    const untimed = point.untimed === true;
    const last = runs.at(-1);
    if (last && last.untimed === untimed) last.points.push(point);
    else runs.push({ untimed, points: [before, point] });
  });
  return runs;
}

/** The hottest point of a curve, the first of several. */
export function peakOf(curve: Curve): CurvePoint | undefined {
  return curve.reduce<CurvePoint | undefined>(
    (best, point) => (best && best.celsius >= point.celsius ? best : point),
    undefined,
  );
}

/** The temperature at a time; undefined before the beginning and after the end. */
export function celsiusAt(curve: Curve, minutes: number): number | undefined {
  const i = curve.findIndex((point) => point.minutes >= minutes);
  const [from, to] = [curve[i - 1], curve[i]];
  if (!to) return undefined;
  if (!from || to.minutes === minutes) return minutes < to.minutes ? undefined : to.celsius;
  const share = (minutes - from.minutes) / (to.minutes - from.minutes);
  return from.celsius + share * (to.celsius - from.celsius);
}

/** The first time after `from` that the curve passes a temperature; undefined where it never does. */
export function minutesAt(curve: Curve, celsius: number, from = 0): number | undefined {
  for (let i = 1; i < curve.length; i += 1) {
    const [a, b] = [curve[i - 1], curve[i]];
    if (!a || !b || b.minutes < from) continue;
    const [low, high] = [Math.min(a.celsius, b.celsius), Math.max(a.celsius, b.celsius)];
    if (celsius < low || celsius > high || low === high) continue;
    const minutes =
      a.minutes + ((celsius - a.celsius) / (b.celsius - a.celsius)) * (b.minutes - a.minutes);
    if (minutes >= from) return minutes;
  }
  return undefined;
}

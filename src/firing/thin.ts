/** A curve with fewer points, for a page to draw. */
import { type Curve, type CurvePoint, findPeak } from "./curve.ts";

/** A stretch between two points that are kept, and the point that strays furthest from it. */
interface Stretch {
  readonly first: number;
  readonly last: number;
  readonly furthest: number;
  readonly strays: number;
}

/**
 * Thins a curve: Douglas and Peucker's method (Cartographica 10 (1973) 112, from memory) with the
 * distance measured in °C, the worst stretch split first. The first point, the peak, the last and
 * whatever surrounds an untimed step are always kept.
 *
 * @param most the most points to keep, unless the points that must be kept are more
 * @param within stop when no point strays further than this from the thinned curve, in °C
 */
export function thinCurve(curve: Curve, most = 200, within = 0.5): Curve {
  const kept = new Set(anchors(curve));
  const edges = [...kept].sort((a, b) => a - b);
  const stretches = edges.slice(1).map((last, i) => measure(curve, edges[i] ?? 0, last));
  while (kept.size < most) {
    const worst = indexOfWorst(stretches);
    const stretch = stretches[worst];
    if (!stretch || stretch.strays <= within) break;
    const { first, furthest, last } = stretch;
    kept.add(furthest);
    stretches.splice(worst, 1, measure(curve, first, furthest), measure(curve, furthest, last));
  }
  return curve.filter((_, i) => kept.has(i));
}

function anchors(curve: Curve): number[] {
  if (curve.length === 0) return [];
  const found = [0, curve.indexOf(findPeak(curve) as CurvePoint), curve.length - 1];
  curve.forEach((point, i) => {
    if (point.untimed) found.push(i - 1, i);
  });
  return found.filter((i) => i >= 0);
}

function indexOfWorst(stretches: readonly Stretch[]): number {
  let worst = -1;
  let most = -1;
  stretches.forEach(({ strays }, i) => {
    if (strays > most) [worst, most] = [i, strays];
  });
  return worst;
}

function measure(curve: Curve, first: number, last: number): Stretch {
  const [from, to] = [curve[first], curve[last]];
  let furthest = first;
  let strays = 0;
  for (let i = first + 1; from && to && i < last; i += 1) {
    const distance = Math.abs(
      (curve[i]?.celsius ?? 0) - heightAt(from, to, curve[i]?.minutes ?? 0),
    );
    if (distance > strays) [furthest, strays] = [i, distance];
  }
  return { first, last, furthest, strays };
}

function heightAt(from: CurvePoint, to: CurvePoint, minutes: number): number {
  const length = to.minutes - from.minutes;
  const share = length > 0 ? (minutes - from.minutes) / length : 0;
  return from.celsius + share * (to.celsius - from.celsius);
}

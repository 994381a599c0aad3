/** Where everything of a kiln's chart stands: a column for each firing, without markup. */
import type { KilnFiring, Off } from "../../src/catalogue/kilns/kilns.ts";
import { coneCount } from "../words/tile/control.ts";

/** Pixels from one cone to the next, and from one shelf's mark to the next. */
export const [coneHeight, markStep] = [36, 8];

export interface KilnColumns {
  /** How many cones are shown on either side of the aim. */
  readonly reach: number;
  readonly columns: readonly KilnColumn[];
}

/** A firing. Places are pixels from the column's middle and from the aim, downwards. */
export interface KilnColumn {
  readonly id: string;
  /** What its log or programme amounts to, left of the shelves. */
  readonly heat: { readonly x: number; readonly y: number } | null;
  /** Its shelves from left to right as they stand from top to bottom. */
  readonly marks: readonly KilnMark[];
  /** How far off its furthest mark is, where that lies beyond what is shown. */
  readonly beyond: { readonly hot: boolean; readonly cones: string } | null;
}

export interface KilnMark {
  readonly x: number;
  readonly y: number;
  readonly shape: "up" | "down" | "square";
  /** Where the cones leave it open how far beyond the mark it went: upwards, downwards. */
  readonly open: "up" | "down" | null;
}

/** The most cones shown on either side of the aim. */
const mostCones = 3;

/** The columns of the firings of which anything is known; null where there are none. */
export function kilnColumns(firings: readonly KilnFiring[]): KilnColumns | null {
  const known = firings.filter((firing) => offsOf(firing).length > 0);
  if (known.length === 0) return null;
  const reach = reachOf(known);
  return { reach, columns: known.map((firing) => columnOf(firing, reach)) };
}

function offsOf({ shelves, heat }: KilnFiring): readonly Off[] {
  return [...shelves.flatMap(({ off }) => off ?? []), ...(heat ? [heat.off] : [])].filter(
    ({ low, high }) => Number.isFinite(low) || Number.isFinite(high),
  );
}

/** As many cones as the marks need, but for those that lie far beyond the rest. */
function reachOf(firings: readonly KilnFiring[]): number {
  const places = firings.flatMap(offsOf).map((off) => Math.abs(placeOf(off)));
  const near = places.filter((place) => place <= mostCones);
  return Math.min(mostCones, Math.max(2, Math.ceil(Math.max(0, ...near))));
}

/** The middle of a stretch, or the end of it that is known. */
function placeOf({ low, high }: Off): number {
  if (!Number.isFinite(low)) return high;
  return Number.isFinite(high) ? (low + high) / 2 : low;
}

function columnOf(firing: KilnFiring, reach: number): KilnColumn {
  const read = firing.shelves.flatMap(({ shelf, off }) => (off ? [{ shelf, off }] : []));
  const slots = read.length + (firing.heat ? 1 : 0);
  const x = (slot: number) => (slot - (slots - 1) / 2) * markStep;
  const y = (off: Off) => {
    const cones = Math.max(-reach, Math.min(reach, placeOf(off)));
    return -Math.round(cones * coneHeight * 10) / 10;
  };
  return {
    id: firing.firing.id,
    heat: firing.heat && { x: x(0), y: y(firing.heat.off) },
    marks: read.map(({ shelf, off }, i) => ({
      x: x(i + (firing.heat ? 1 : 0)),
      y: y(off),
      shape: shelf === "top" ? "up" : shelf === "bottom" ? "down" : "square",
      open: openEnd(off),
    })),
    beyond: beyondOf(offsOf(firing).map(placeOf), reach),
  };
}

function openEnd({ low, high }: Off): KilnMark["open"] {
  if (!Number.isFinite(high)) return "up";
  return Number.isFinite(low) ? null : "down";
}

function beyondOf(places: readonly number[], reach: number): KilnColumn["beyond"] {
  const [furthest = 0] = places.toSorted((a, b) => Math.abs(b) - Math.abs(a));
  if (Math.abs(furthest) <= reach) return null;
  return { hot: furthest > 0, cones: coneCount(furthest).replace(/ cones?$/u, "") };
}

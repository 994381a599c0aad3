/** Which glazes the grid has rows and columns for, and in what order. */
import { type Lab, linearToLab } from "../../colour/cielab.ts";
import { hexToLinear } from "../../colour/srgb.ts";
import type { GridColour, GridGlaze, GridIndex } from "../../publish/grid-file.ts";
import { type Cone, compareCones, conesOutside, parseCone } from "../../terms/cones.ts";
import { compareIds } from "../../terms/ids.ts";
import { keyOf, type Squares } from "./squares.ts";
import type { Order, View } from "./view.ts";

/** What the glazes of a view are chosen and put in order by. */
export interface Known {
  readonly index: GridIndex;
  /** Of this cone, on whatever clay and in whatever fire. */
  readonly squares: Squares;
  readonly colours: ReadonlyMap<number, GridColour>;
}

/**
 * The places of the glazes in their order: all of them, or those that belong at the cone of the view,
 * by their label or by a tile. Of a glaze whose range nobody wrote down nobody can say that it does not.
 */
export function listGlazes(view: View, known: Known): readonly number[] {
  const { index } = known;
  const cone = readCone(index.cones.labels[view.cone] ?? "");
  const tried = view.all ? new Set<number>() : triedGlazes(known);
  const places = index.glazes.flatMap((glaze, place) =>
    view.all || tried.has(place) || isMeantFor(glaze, cone) ? [place] : [],
  );
  const compare = comparisons[view.order];
  const counted = { ...known, met: countMet(known) };
  const byName = (a: number, b: number) =>
    compareIds(index.glazes[a]?.name ?? "", index.glazes[b]?.name ?? "") || a - b;
  return places.sort((a, b) => compare(a, b, counted) || byName(a, b));
}

function readCone(label: string): Cone | undefined {
  const reading = parseCone(label, "any");
  return reading.ok ? reading.cone : undefined;
}

/** Of tiles that have no cone, only what is on one belongs there. */
function isMeantFor({ cones }: GridGlaze, cone: Cone | undefined): boolean {
  if (cone === undefined) return false;
  return cones === null || conesOutside(cone, { from: cones[0], to: cones[1] }) === 0;
}

function triedGlazes({ index: { glazes }, squares: { tried, besides } }: Known): Set<number> {
  const keys = [...tried.keys(), ...besides.keys()];
  return new Set(keys.flatMap((key) => [Math.floor(key / glazes.length), key % glazes.length]));
}

/** A glaze is tried as often as there are squares of its row and its column with a tile. */
interface Counted extends Known {
  readonly met: ReadonlyMap<number, number>;
}

function countMet({ index: { glazes }, squares: { tried } }: Known): ReadonlyMap<number, number> {
  const met = new Map<number, number>();
  for (const key of tried.keys())
    for (const place of new Set([Math.floor(key / glazes.length), key % glazes.length]))
      met.set(place, (met.get(place) ?? 0) + 1);
  return met;
}

type Compare = (a: number, b: number, known: Counted) => number;

const comparisons: Readonly<Record<Order, Compare>> = {
  name: () => 0,
  tried: (a, b, { met }) => (met.get(b) ?? 0) - (met.get(a) ?? 0),
  colour: (a, b, { colours }) =>
    compareLists(placeOfColour(colours.get(a)), placeOfColour(colours.get(b))),
  range: (a, b, { index }) => compareRanges(index.glazes[a], index.glazes[b]),
  movement: (a, b, known) => compareLists(placeOfMovement(a, known), placeOfMovement(b, known)),
};

/** What lies nearer to grey than this has no hue that an eye would sort it by. Common practice, no source. */
const grey = 8;

/** Greys from light to dark, then round the hues from red; what nobody measured comes last. */
function placeOfColour(colour: GridColour | undefined): readonly number[] {
  if (!colour) return [2];
  const [L, a, b]: Lab = linearToLab(hexToLinear(colour[1]));
  if (Math.hypot(a, b) < grey) return [0, -L];
  return [1, (Math.atan2(b, a) + 2 * Math.PI) % (2 * Math.PI)];
}

/** From cool to hot, the narrower range first; what has no range comes last. */
function compareRanges(a: GridGlaze | undefined, b: GridGlaze | undefined): number {
  const [ofA, ofB] = [a?.cones ?? null, b?.cones ?? null];
  if (!ofA || !ofB) return Number(!ofA) - Number(!ofB);
  return compareCones(ofA[0], ofB[0]) || compareCones(ofA[1], ofB[1]);
}

const byLabel = ["runs", "little", "none"] as const;

/** What ran farthest by itself on a tile, then what a label says, then what nobody knows. */
function placeOfMovement(place: number, { index, squares }: Known): readonly number[] {
  const alone = squares.tried.get(keyOf({ over: place, under: place }, index));
  if (alone && alone.measured > 0) return [0, -alone.run];
  const moves = index.glazes[place]?.moves ?? null;
  return moves === null ? [2] : [1, byLabel.indexOf(moves)];
}

function compareLists(a: readonly number[], b: readonly number[]): number {
  const place = a.findIndex((value, i) => value !== b[i]);
  return place < 0 ? 0 : (a[place] ?? 0) - (b[place] ?? 0);
}

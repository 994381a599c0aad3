/**
 * What the measurements of a glaze alone say when one thing is changed: more coats, a hotter cone,
 * another clay, the other air, a slower way down; and where tiles that should be the same are not.
 *
 * Only tiles are compared that lie evenly in so many coats, on a known clay, fired once to a known
 * cone, and whose make-ups are the same but for that one thing. What nobody wrote down of either is
 * told beside the finding; where tiles that should be the same lie as far apart as those compared,
 * the finding says so.
 */

import { differenceCiede2000 } from "../../colour/difference.ts";
import type { MeasuredColour } from "../../colour/measure.ts";
import { groupAlike, unknownAspects } from "../../likeness/alike.ts";
import type { Aspect } from "../../likeness/make-up.ts";
import { compareCones } from "../../terms/cones.ts";
import { compareIds } from "../../terms/ids.ts";
import { groupBy } from "../group-by.ts";
import { findMiddling, preferSound } from "./glaze-paint.ts";
import type { MeasuredAlone } from "./measured-alone.ts";
import type { ColourTrust } from "./trust.ts";

/** Two measurements of a glaze alone that differ in one thing, or in nothing that is recorded here. */
export interface ColourFinding {
  readonly along: "atmosphere" | "clay" | "coats" | "cone" | "cooling" | "nothing";
  readonly from: MeasuredAlone;
  readonly to: MeasuredAlone;
  /** CIEDE2000. */
  readonly difference: number;
  /** How many such pairs there are, of which this is the widest that means something, if any does. */
  readonly pairs: number;
  /**
   * "apart" where the difference means something; "alike" where it is no more than tiles made alike
   * differ here; "scattered" where tiles that should be the same differ as much; "unjudged" where
   * nobody knows how much tiles made alike differ.
   */
  readonly verdict: "alike" | "apart" | "scattered" | "unjudged";
  /** What changes most from the one to the other. */
  readonly change: ColourChange;
  /** What nobody wrote down of either, so that it may have made the difference. */
  readonly unknown: readonly Aspect[];
}

export type ColourChange = "darker" | "greyer" | "hue" | "lighter" | "stronger";

/** Everything that is found, in the order: coats, cone, clay, air, and what should not differ. */
export function findColours(
  measured: readonly MeasuredAlone[],
  trust: ColourTrust | null,
): readonly ColourFinding[] {
  const cells = groupWithout("nothing", measured.filter(isComparable)).map(toCell);
  const found = [
    ...axes.flatMap((along) => findAlong(along, cells, trust)),
    ...cells.flatMap((cell) => findScatter(cell, trust)),
  ];
  const alike = groupBy(found, ({ along, from, to }) =>
    JSON.stringify([along, [from, to].map(groundOf)]),
  );
  return alike.map((pairs) => ({ ...widest(pairs), pairs: pairs.length }));
}

function groundOf({ clay, atmosphere, fire, cooling }: MeasuredAlone) {
  return [clay?.id, atmosphere, fire, cooling];
}

const weights = { apart: 2, unjudged: 2, scattered: 1, alike: 0 } as const;

function widest(pairs: readonly [ColourFinding, ...ColourFinding[]]): ColourFinding {
  return pairs.reduce((most, pair) => {
    const weight = weights[pair.verdict] - weights[most.verdict];
    return weight > 0 || (weight === 0 && pair.difference > most.difference) ? pair : most;
  });
}

/** Tiles that should be the same, the one that speaks for them, and the two furthest apart. */
interface Cell {
  readonly middle: MeasuredAlone;
  readonly furthest: Compared | null;
}

interface Compared {
  readonly from: MeasuredAlone;
  readonly to: MeasuredAlone;
  readonly difference: number;
}

type Axis = Exclude<ColourFinding["along"], "nothing">;

const axes: readonly Axis[] = ["coats", "cone", "clay", "atmosphere", "cooling"];

function isComparable(one: MeasuredAlone): boolean {
  return one.coats !== null && one.clay !== null && one.cone !== null && !one.firedAgain;
}

/** Groups what is made and fired alike but for one thing; what nobody wrote down is told beside it. */
function groupWithout(along: ColourFinding["along"], measured: readonly MeasuredAlone[]) {
  return groupAlike(measured, ({ makeUp }) => makeUp, {
    leaveOut: ({ aspect }) => aspect === along,
    unwritten: "together",
  });
}

function toCell(alike: readonly [MeasuredAlone, ...MeasuredAlone[]]): Cell {
  let furthest: Compared | null = null;
  for (const [i, from] of alike.entries()) {
    for (const to of alike.slice(i + 1)) {
      const pair = compare(from, to);
      if (furthest === null || pair.difference > furthest.difference) furthest = pair;
    }
  }
  return { middle: findMiddling(preferSound(alike)) ?? alike[0], furthest };
}

function compare(from: MeasuredAlone, to: MeasuredAlone): Compared {
  return { from, to, difference: differenceCiede2000(from.colour.lab, to.colour.lab) };
}

/** Of coats and cones the two ends, of clays and of airs every two. */
function findAlong(
  along: Axis,
  cells: readonly Cell[],
  trust: ColourTrust | null,
): readonly ColourFinding[] {
  const cellOf = new Map(cells.map((cell) => [cell.middle, cell]));
  return groupWithout(along, [...cellOf.keys()])
    .map((row) => row.filter((one) => along !== "cooling" || one.cooling !== "unknown"))
    .map((row) => row.sort(order[along]).flatMap((one) => cellOf.get(one) ?? []))
    .flatMap((row) => (along === "clay" || along === "atmosphere" ? everyTwo(row) : ends(row)))
    .map(([one, other]) => {
      const compared = compare(one.middle, other.middle);
      const scatter = Math.max(one.furthest?.difference ?? 0, other.furthest?.difference ?? 0);
      return {
        along,
        ...compared,
        pairs: 1,
        verdict: judge(compared.difference, scatter, trust),
        change: mainChange(one.middle.colour, other.middle.colour),
        unknown: unknownOf(one.middle, other.middle),
      };
    });
}

const order: Readonly<Record<Axis, (a: MeasuredAlone, b: MeasuredAlone) => number>> = {
  coats: (a, b) => (a.coats ?? 0) - (b.coats ?? 0),
  cone: (a, b) => (a.cone && b.cone ? compareCones(a.cone, b.cone) : 0),
  clay: (a, b) => compareIds(a.clay?.name ?? "", b.clay?.name ?? ""),
  atmosphere: (a, b) => compareIds(a.atmosphere ?? "", b.atmosphere ?? ""),
  cooling: (a, b) => compareIds(a.cooling, b.cooling),
};

function unknownOf(one: MeasuredAlone, other: MeasuredAlone): ColourFinding["unknown"] {
  const aspects = [one, other].flatMap(({ makeUp }) => unknownAspects(makeUp));
  return [...new Set(aspects)];
}

function ends(row: readonly Cell[]): readonly (readonly [Cell, Cell])[] {
  const [first, last] = [row[0], row.at(-1)];
  return first && last && first !== last ? [[first, last]] : [];
}

function everyTwo(row: readonly Cell[]): readonly (readonly [Cell, Cell])[] {
  return row.flatMap((one, i) => row.slice(i + 1).map((other) => [one, other] as const));
}

function judge(
  difference: number,
  scatter: number,
  trust: ColourTrust | null,
): ColourFinding["verdict"] {
  if (trust === null) return "unjudged";
  if (difference <= trust.difference) return "alike";
  return difference <= scatter ? "scattered" : "apart";
}

/** Tiles that should be the same and are further apart than tiles made and fired alike are here. */
function findScatter({ furthest }: Cell, trust: ColourTrust | null): readonly ColourFinding[] {
  if (furthest === null || trust === null || furthest.difference <= trust.difference) return [];
  const { from, to } = furthest;
  return [
    {
      along: "nothing",
      ...furthest,
      pairs: 1,
      verdict: "apart",
      change: mainChange(from.colour, to.colour),
      unknown: unknownOf(from, to),
    },
  ];
}

/**
 * What changes most from one colour to another, of lightness, chroma and hue in CIELAB: the parts
 * that make up the plain distance between two colours there (CIE 15:2018, section 8.2.1).
 */
export function mainChange(
  { lab: from }: Pick<MeasuredColour, "lab">,
  { lab: to }: Pick<MeasuredColour, "lab">,
): ColourChange {
  const lightness = to[0] - from[0];
  const chroma = Math.hypot(to[1], to[2]) - Math.hypot(from[1], from[2]);
  const across = (to[1] - from[1]) ** 2 + (to[2] - from[2]) ** 2;
  const hue = Math.sqrt(Math.max(0, across - chroma ** 2));
  if (hue > Math.abs(lightness) && hue > Math.abs(chroma)) return "hue";
  if (Math.abs(lightness) >= Math.abs(chroma)) return lightness < 0 ? "darker" : "lighter";
  return chroma < 0 ? "greyer" : "stronger";
}

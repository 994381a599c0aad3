/** How mixed glazes fit the clays of known expansion, beside what the archive's tiles did. */

import type { Expansion } from "../../chemistry/expansion/expansion.ts";
import { compareFits, type Fit } from "../../chemistry/fit.ts";
import { type ConeRange, compareCones } from "../../terms/cones.ts";
import { indexBy } from "../../terms/index-by.ts";
import type { CatalogueClay } from "../clays.ts";
import type { Link } from "../link.ts";
import type { CatalogueTile } from "../tiles.ts";

/** The faults that tell of fit. */
export type FitFault = "crazing" | "dunting" | "shivering";

/** A tile on which a fault was seen, and the day of the later look that first showed it. */
export interface SeenFault {
  readonly tile: string;
  /** Null where the first result told it. */
  readonly later: string | null;
}

/** What the archive's tiles of one glaze alone on one clay did. */
export interface SeenTogether {
  /** The tiles with a result, by their codes. */
  readonly tiles: readonly string[];
  /** The faults of fit that some of them show, in alphabetical order. */
  readonly faults: readonly { readonly fault: FitFault; readonly tiles: readonly SeenFault[] }[];
  /** Tiles on which somebody looked for faults and saw none of these. */
  readonly without: readonly string[];
}

/** A glaze on a clay whose expansion is known. */
export interface ClayFit {
  readonly clay: Link;
  /** Of the clay, in 10⁻⁶ per kelvin. */
  readonly mean: number;
  readonly between: readonly [from: number, to: number] | null;
  /** By each set of factors that covers the glaze, the one nearest to measured glasses first. */
  readonly fits: readonly Fit[];
  readonly seen: SeenTogether;
}

/** What of a glaze decides its fit. */
export interface FittedGlaze {
  readonly cones: ConeRange | null;
  readonly expansion: readonly Expansion[];
  /** The tiles on which it is alone. */
  readonly alone: readonly CatalogueTile[];
}

/**
 * A glaze beside every clay of known expansion. A clay that shares no cone with the glaze, and no
 * tile, is named and not compared: nobody should be led to fire it there.
 */
export function findFits(
  glaze: FittedGlaze,
  clays: readonly CatalogueClay[],
): { readonly fits: readonly ClayFit[]; readonly apart: readonly Link[] } {
  if (glaze.expansion.length === 0) return { fits: [], apart: [] };
  const on = indexBy(glaze.alone, ({ clay }) => (clay ? [clay.id] : []));
  const known = clays.flatMap((clay) => {
    if (!clay.expansion) return [];
    const tiles = on.get(clay.id) ?? [];
    return [{ clay, expansion: clay.expansion, tiles }];
  });
  const isTogether = ({ clay, tiles }: (typeof known)[number]) =>
    tiles.length > 0 || shareACone(glaze.cones, clay.cones);
  const fits = known.filter(isTogether).map(({ clay, expansion, tiles }) => ({
    clay: toLink(clay),
    ...expansion,
    fits: compareFits(glaze.expansion, perKelvin(expansion)),
    seen: seeTogether(tiles),
  }));
  return {
    fits: [...fits].sort((a, b) => b.seen.tiles.length - a.seen.tiles.length),
    apart: known.filter((entry) => !isTogether(entry)).map(({ clay }) => toLink(clay)),
  };
}

function toLink({ id, name, url }: Link): Link {
  return { id, name, url };
}

function perKelvin({ mean, between }: NonNullable<CatalogueClay["expansion"]>) {
  return { perKelvin: mean * 1e-6, between: between ?? undefined };
}

/** Where one of the two is not known, they may. */
function shareACone(a: ConeRange | null, b: ConeRange | null): boolean {
  if (!a || !b) return true;
  return compareCones(a.from, b.to) <= 0 && compareCones(b.from, a.to) <= 0;
}

const fitFaults: readonly FitFault[] = ["crazing", "dunting", "shivering"];

/** What tiles show of fit; a tile of which nobody told its faults counts neither way. */
export function seeTogether(tiles: readonly CatalogueTile[]): SeenTogether {
  const recorded = tiles.filter(({ results }) => results.length > 0);
  const faults = fitFaults.map((fault) => ({
    fault,
    tiles: recorded.flatMap((tile) => seenOn(tile, fault) ?? []),
  }));
  const faulty = new Set(faults.flatMap((entry) => entry.tiles.map(({ tile }) => tile)));
  return {
    tiles: recorded.map(({ id }) => id),
    faults: faults.filter((entry) => entry.tiles.length > 0),
    without: recorded.filter((tile) => wasLookedAt(tile) && !faulty.has(tile.id)).map((t) => t.id),
  };
}

function seenOn({ id, results, later }: CatalogueTile, fault: FitFault): SeenFault | undefined {
  if (results.some((result) => result.faults?.includes(fault))) return { tile: id, later: null };
  const days = later.filter((look) => look.faults?.includes(fault)).map((look) => look.on);
  const [first] = days.sort();
  return first === undefined ? undefined : { tile: id, later: first };
}

function wasLookedAt({ results, later }: CatalogueTile): boolean {
  return [...results, ...later].some(({ faults }) => faults !== undefined && faults.length > 0);
}

/**
 * What it did to change the order of two glazes: told by tiles that differ in nothing else. Where
 * there are none, what differs besides, so that nobody takes the order for the cause.
 */
import { type MakeUpDifferences, makeUpDifferences } from "../likeness/differences.ts";
import type { Aspect } from "../likeness/make-up.ts";
import { apartFinder, type Beside, besideEachOther } from "./apart.ts";
import { countDid, type Did } from "./asked.ts";
import type { CataloguePair } from "./pairs.ts";
import type { CatalogueTile } from "./tiles.ts";
import { tilesByCode } from "./tiles-by-code.ts";
import type { Catalogue } from "./types.ts";

/** A tile with the pair as its page names it, and one that differs from it in the order alone. */
export interface Swap {
  readonly tile: CatalogueTile;
  readonly other: CatalogueTile;
  readonly beside: Beside;
}

/** Two tiles of the two orders that differ in more than that, as little as any do. */
export interface NearestSwap extends MakeUpDifferences {
  readonly tile: CatalogueTile;
  readonly other: CatalogueTile;
}

export interface OrderOfPair {
  readonly swaps: readonly Swap[];
  readonly did: Did;
  /** What nobody wrote down of some of them. */
  readonly unknown: readonly Aspect[];
  /** Null where there are swaps, and where nobody recorded a result of either order. */
  readonly nearest: NearestSwap | null;
}

/**
 * Compares the two orders of a pair.
 *
 * @param reversed the codes of the tiles that have it the other way round
 */
export function orderOf(
  catalogue: Catalogue,
  pair: Pick<CataloguePair, "tiles">,
  reversed: readonly string[],
): OrderOfPair {
  const swaps = swapsOf(catalogue, pair, reversed);
  return {
    swaps,
    did: countDid(
      swaps.map(({ tile, other }) => [tile, other] as const),
      catalogue.trust,
    ),
    unknown: [...new Set(swaps.flatMap(({ beside }) => beside.unknown))],
    nearest:
      swaps.length > 0
        ? null
        : findNearest(
            onlyOf(catalogue, pair.tiles, reversed),
            onlyOf(catalogue, reversed, pair.tiles),
          ),
  };
}

function recordedOf(catalogue: Catalogue, codes: readonly string[]): readonly CatalogueTile[] {
  return tilesByCode(catalogue, codes).filter(({ results }) => results.length > 0);
}

/**
 * Every tile of a pair beside every one that differs from it in nothing but the order of the two. A
 * tile that has them both ways shows neither.
 */
export function swapsOf(
  catalogue: Catalogue,
  pair: Pick<CataloguePair, "tiles">,
  reversed: readonly string[],
): readonly Swap[] {
  const these = onlyOf(catalogue, pair.tiles, reversed);
  const those = new Set(onlyOf(catalogue, reversed, pair.tiles));
  if (those.size === 0) return [];
  const findApart = apartFinder(catalogue);
  return these.flatMap((tile) =>
    findApart(tile)
      .filter(({ difference, tile: other }) => difference === "order" && those.has(other))
      .map(({ tile: other }) => ({ tile, other, beside: besideEachOther(tile, other) })),
  );
}

/** The tiles with a result among some codes, without those among others. */
function onlyOf(
  catalogue: Catalogue,
  codes: readonly string[],
  others: readonly string[],
): readonly CatalogueTile[] {
  const left = new Set(others);
  return recordedOf(
    catalogue,
    codes.filter((code) => !left.has(code)),
  );
}

/** So many tiles of each order are compared with one another. */
const mostCompared = 24;

function findNearest(
  these: readonly CatalogueTile[],
  those: readonly CatalogueTile[],
): NearestSwap | null {
  let nearest: NearestSwap | null = null;
  for (const tile of these.slice(0, mostCompared)) {
    for (const other of those.slice(0, mostCompared)) {
      const apart = makeUpDifferences(tile.makeUp, other.makeUp);
      if (!nearest || sizeOf(apart) < sizeOf(nearest)) nearest = { tile, other, ...apart };
    }
  }
  return nearest;
}

function sizeOf({ differ, unknown }: MakeUpDifferences): number {
  return differ.length + unknown.length;
}

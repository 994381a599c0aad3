/** What two mixed glazes become where one lies over the other. */

import type { GlazeChemistry } from "../../chemistry/glazes.ts";
import {
  type Coating,
  type Melt,
  type MeltFormula,
  type MeltPoint,
  meltFormulaAt,
  meltPath,
  meltTogether,
  upperShareOf,
} from "../../chemistry/overlap.ts";
import { meets } from "../../records/coat-stack.ts";
import { idKey } from "../../terms/ids.ts";
import type { CatalogueTile } from "../tiles.ts";

/** The melt of so many coats over so many. */
export interface MeltedCoats {
  readonly over: number;
  readonly under: number;
  readonly tiles: readonly string[];
  readonly melt: Melt;
  /**
   * The melt if a coat of the upper glaze weighed a third of one of the lower, and if it weighed
   * three times as much; null where both weights are known.
   */
  readonly range: readonly [MeltFormula, MeltFormula] | null;
}

/** What two mixed glazes become where one lies over the other. */
export interface Overlap {
  /** From the lower glaze alone to the upper alone, at every tenth. */
  readonly path: readonly MeltPoint[];
  /** Every number of coats that some tile has. */
  readonly coats: readonly MeltedCoats[];
  /** Tiles whose coats nobody wrote down. */
  readonly unknown: readonly string[];
}

/** A glaze as it takes part in an overlap. */
export interface LappingGlaze {
  readonly id: string;
  readonly chemistry: GlazeChemistry;
  /** Of one coat, relative to other glazes, where known. */
  readonly weightPerCoat: number | undefined;
}

/**
 * The melts of a pair: on the way from one to the other, and for every number of coats on its
 * tiles.
 */
export function findOverlap(
  over: LappingGlaze,
  under: LappingGlaze,
  tiles: readonly CatalogueTile[],
): Overlap {
  const counted = tiles.map((tile) => ({ tile, coats: countLapped(tile, over.id, under.id) }));
  const groups = new Map<string, { coats: LappedCoats; tiles: string[] }>();
  for (const { tile, coats } of counted) {
    if (!coats) continue;
    const key = `${coats.over} ${coats.under}`;
    const group = groups.get(key);
    if (group) group.tiles.push(tile.id);
    else groups.set(key, { coats, tiles: [tile.id] });
  }
  return {
    path: meltPath(under.chemistry.raw, over.chemistry.raw),
    coats: [...groups.values()]
      .sort((a, b) => a.coats.over - b.coats.over || a.coats.under - b.coats.under)
      .map((group) => ({ ...group.coats, tiles: group.tiles, ...melts(over, under, group.coats) })),
    unknown: counted.filter(({ coats }) => !coats).map(({ tile }) => tile.id),
  };
}

export interface LappedCoats {
  readonly over: number;
  readonly under: number;
}

/**
 * How many coats of each lie where they meet; undefined where it is not known, where it is not one
 * number, and where each lies over the other in turn.
 */
export function countLapped(
  { coatCounts, pairs }: CatalogueTile,
  over: string,
  under: string,
): LappedCoats | undefined {
  const isReversed = pairs.some((pair) => pair.over.id === under && pair.under.id === over);
  const of = (id: string) => coatCounts.filter(({ glaze }) => idKey(glaze) === idKey(id));
  const meeting = of(over).flatMap((upper) =>
    of(under)
      .filter((lower) => meets(upper.area, lower.area))
      .map((lower) => ({ over: upper.coats, under: lower.coats })),
  );
  const [first] = meeting;
  if (!first || isReversed || first.over === null || first.under === null) return undefined;
  const isOne = meeting.every((it) => it.over === first.over && it.under === first.under);
  return isOne ? { over: first.over, under: first.under } : undefined;
}

/** Brushed and dipped coats, thick and thin slops: one coat may weigh several others. */
const unlikeCoats = [1 / 3, 3] as const;

function melts(
  over: LappingGlaze,
  under: LappingGlaze,
  coats: LappedCoats,
): Pick<MeltedCoats, "melt" | "range"> {
  const upper: Coating = { ...toCoating(over), coats: coats.over };
  const lower: Coating = { ...toCoating(under), coats: coats.under };
  const isKnown = over.weightPerCoat !== undefined && under.weightPerCoat !== undefined;
  if (isKnown) return { melt: meltTogether(lower, upper), range: null };
  const even = { ...lower, weightPerCoat: 1 };
  const formulaAt = (weightPerCoat: number) =>
    meltFormulaAt(lower.raw, upper.raw, upperShareOf(even, { ...upper, weightPerCoat }));
  return {
    melt: meltTogether(even, { ...upper, weightPerCoat: 1 }),
    range: [formulaAt(unlikeCoats[0]), formulaAt(unlikeCoats[1])],
  };
}

function toCoating({ chemistry, weightPerCoat }: LappingGlaze): Omit<Coating, "coats"> {
  return { raw: chemistry.raw, weightPerCoat };
}

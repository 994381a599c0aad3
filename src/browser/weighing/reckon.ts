/** What a batch comes to: plain figures, without the page. */
import { dryGrams } from "../../chemistry/weighing.ts";

/** A line of the sheet. */
export interface Line {
  readonly parts: number;
  readonly isAddition: boolean;
  /** What a kilogram costs; null where it is not known. */
  readonly price: number | null;
}

/** A batch by the grams of its ingredients, or by the bucket. */
export type Wanted =
  | { readonly by: "weight"; readonly grams: number }
  | {
      readonly by: "bucket";
      readonly litres: number;
      readonly specificGravity: number;
      /** Of the dry glaze, in g/cm³. */
      readonly dryDensity: number;
      /** So much more is mixed than is asked for, since some is lost. */
      readonly lossPerCent: number;
    };

export interface Reckoned {
  /** For each line. */
  readonly grams: readonly number[];
  readonly total: number;
  /** Millilitres for the bucket; null for a batch by weight. */
  readonly water: number | null;
  /** Of the materials whose price is known; null where none is. */
  readonly cost: number | null;
  /** Whether some of it has no known price, so that the cost is that of a part. */
  readonly isPartCost: boolean;
}

/** Undefined where no batch of that kind can be: a slop is heavier than water, and lighter than its solids. */
export function reckon(lines: readonly Line[], wanted: Wanted): Reckoned | undefined {
  const perPart = gramsPerPart(lines, wanted);
  if (!(perPart > 0) || !Number.isFinite(perPart)) return undefined;
  const grams = lines.map(({ parts }) => parts * perPart);
  const sum = grams.reduce((total, weight) => total + weight, 0);
  const slop = wanted.by === "bucket" ? withLoss(wanted) : null;
  const water = slop && 1000 * slop.litres * slop.specificGravity - sum;
  if (water !== null && water < 0) return undefined;
  const isPartCost = lines.some(({ price }) => price === null);
  return { grams, total: sum, water, cost: costOf(lines, grams), isPartCost };
}

function gramsPerPart(lines: readonly Line[], wanted: Wanted): number {
  const sumOf = (some: readonly Line[]) => some.reduce((sum, { parts }) => sum + parts, 0);
  if (wanted.by === "weight")
    return wanted.grams / sumOf(lines.filter(({ isAddition }) => !isAddition));
  if (wanted.lossPerCent < 0) return Number.NaN;
  return dryGrams(withLoss(wanted)) / sumOf(lines);
}

function withLoss(wanted: Extract<Wanted, { by: "bucket" }>) {
  return { ...wanted, litres: wanted.litres * (1 + wanted.lossPerCent / 100) };
}

function costOf(lines: readonly Line[], grams: readonly number[]): number | null {
  if (lines.every(({ price }) => price === null)) return null;
  return lines.reduce((sum, { price }, i) => sum + ((grams[i] ?? 0) / 1000) * (price ?? 0), 0);
}

/** How much of something harmful a glaze holds. */
import { sumOfOxides } from "../oxide-sums.ts";
import type { Ingredient } from "./ingredients.ts";
import type { Substance } from "./substances.ts";

/** A material as it goes into a batch, in any unit of weight. */
export interface WeighedIngredient {
  readonly ingredient: Ingredient;
  readonly weight: number;
}

/** Per cent of a raw material as somebody wrote it; null where nobody knows how much. */
export function amountIn(
  { contents, spoken }: Ingredient,
  { element, oxide }: Pick<Substance, "element" | "oxide">,
): number | null {
  const counted = oxide === null ? 0 : (contents.oxides[oxide] ?? 0);
  if (counted > 0) return counted;
  const written = contents.elements.get(element);
  if (written !== undefined) return written;
  return spoken.includes(element) ? null : 0;
}

/**
 * Per cent of what is fired. Of a material that cannot be read at all everything is taken to stay;
 * of an analysis with a line that cannot be read, the other lines count as they would without it.
 */
export function amountFired(batch: readonly WeighedIngredient[], substance: Substance): number {
  const sum = (amountOf: (ingredient: Ingredient) => number) =>
    batch.reduce((total, { ingredient, weight }) => total + weight * amountOf(ingredient), 0);
  const held = sum((ingredient) => amountIn(ingredient, substance) ?? 0);
  return held === 0 ? 0 : (100 * held) / sum(staysOf);
}

function staysOf({ contents }: Ingredient): number {
  const known = sumOfOxides(contents.oxides);
  return known > 0 || contents.isWhole ? known : 100;
}

/** Whether every material could be read to its last line. */
export function isWhollyRead(batch: readonly WeighedIngredient[]): boolean {
  return batch.every(({ ingredient }) => ingredient.contents.isWhole);
}

/** Two figures, as analyses are no surer; never “0” for what is there. */
export function formatHeld(perCent: number): string {
  if (perCent < 0.005) return "less than 0.01";
  const decimals = perCent >= 10 ? 0 : perCent >= 1 ? 1 : 2;
  return String(Number(perCent.toFixed(decimals)));
}

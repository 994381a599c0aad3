/** How much of something harmful a glaze holds. */
import { rememberFor } from "../../terms/remember.ts";
import { sumOfOxides } from "../oxide-sums.ts";
import type { Ingredient } from "./ingredients.ts";
import { type Substance, substances } from "./substances.ts";

/** A material as it goes into a batch, in any unit of weight. */
export interface WeighedIngredient {
  readonly ingredient: Ingredient;
  readonly weight: number;
}

/** The substances that some material holds, or may hold, in their order. */
export function substancesIn(ingredients: readonly Ingredient[]): readonly Substance[] {
  const held = new Set(ingredients.flatMap(substancesOf));
  return substances.filter((substance) => held.has(substance));
}

/** Most recipes are of materials that many recipes have: each is asked once. */
const substancesOf = rememberFor((ingredient: Ingredient) =>
  substances.filter((substance) => amountIn(ingredient, substance) !== 0),
);

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

/** Words that cautions are put together of. */
import type { HazardStatement } from "./compounds.ts";
import type { Ingredient } from "./ingredients.ts";
import type { Statement } from "./statement.ts";

export function namesOf(ingredients: readonly Ingredient[]): string {
  return listed([...new Set(ingredients.map(({ name }) => name))]);
}

/** `lead, cadmium and arsenic` */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words.join("");
  return `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}

/** The statements that are true of one of some materials, as one clause. */
export function saysOf(
  statements: readonly HazardStatement[],
  ingredients: readonly Ingredient[],
): string {
  return trueOf(statements, ingredients)
    .map(({ says }) => says)
    .join("; it ");
}

/** They come without the question that was asked of the materials: what is told of them is data. */
export function trueOf(
  statements: readonly HazardStatement[],
  ingredients: readonly Ingredient[],
): readonly Statement[] {
  return statements
    .filter(({ when }) => when === undefined || ingredients.some(when))
    .map(({ says, source, tag }) => ({ says, source, tag }));
}

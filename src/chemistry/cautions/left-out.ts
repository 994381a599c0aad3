import { amountIn } from "./amounts.ts";
import { isHexavalent } from "./forms.ts";
import { isSalt } from "./handling-cautions.ts";
import type { Ingredient } from "./ingredients.ts";
import { mineralHazards } from "./minerals.ts";
import { substances } from "./substances.ts";

/**
 * Whether Tilebook never brings a material into a recipe of its own accord: whatever holds, or by
 * its name may hold, a poison, hexavalent chromium or asbestos, and salt.
 */
export function isLeftOut(ingredient: Ingredient): boolean {
  const holdsPoison = substances.some(
    (substance) => substance.isPoison && amountIn(ingredient, substance) !== 0,
  );
  const isLoudMineral = mineralHazards.some(({ isLoud, isIn }) => isLoud && isIn(ingredient));
  return holdsPoison || isLoudMineral || isHexavalent(ingredient) || isSalt(ingredient);
}

/** What a weighing sheet says of small amounts and of density. */

import type { DryDensity } from "../../../src/chemistry/dry-density.ts";
import { dryGrams } from "../../../src/chemistry/weighing.ts";
import { listed } from "../english/numbers.ts";
import { fixed, roughly } from "./chemistry.ts";

/** `addition, 0.5 parts; a small amount: weigh it by itself on a fine scale, then tip it in`. */
export function portionWords(portion: {
  readonly isAddition: boolean;
  /** Null where its parts are not those of the recipe. */
  readonly parts: number | null;
  readonly isSlight: boolean;
}): string {
  const { isAddition, parts } = portion;
  const figure = parts === null ? "" : String(Number(parts.toFixed(2)));
  const amount = figure && `${figure} ${figure === "1" ? "part" : "parts"}`;
  const what = [isAddition && "addition", amount].filter(Boolean).join(", ");
  return [what, portion.isSlight && slightWords].filter(Boolean).join("; ");
}

const slightWords = "a small amount: weigh it by itself on a fine scale, then tip it in";

/** What the density rests on, its range, and what that does to a litre at 1.45. */
export function densityWords({ low, likely, high, unknown }: DryDensity): string {
  const [least, most] = [low, high].map((d) => fixed(d, 2));
  const range = least === most ? "" : ` (${least} to ${most})`;
  const rests =
    unknown.length === 0
      ? "worked out from this recipe and the densities of its minerals"
      : `worked out from this recipe; the density of ${listed(unknown)} is not known, which makes the range wide`;
  return `Dry density d: ${fixed(likely, 2)} g/cm³${range}, ${rests}. ${litreWords(low, high)}`;
}

function litreWords(low: number, high: number): string {
  const [most, least] = [low, high].map((dryDensity) =>
    roughly(dryGrams({ litres: 1, specificGravity: 1.45, dryDensity })),
  );
  return least === most
    ? "The range is too small to matter in a bucket."
    : `So a litre at SG 1.45 holds ${least} to ${most} g of dry glaze.`;
}

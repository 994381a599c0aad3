/** What a weighing sheet says of density. */

import type { DryDensity } from "../../../src/chemistry/dry-density.ts";
import { dryGrams } from "../../../src/chemistry/weighing.ts";
import { listed } from "../english/numbers.ts";
import { fixed, roughly } from "./chemistry.ts";

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

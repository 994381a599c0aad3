/** Cones, and stretches of the line of cones, in words. */
import type { HeatReached } from "../../../src/firing/heat.ts";
import type { EquivalentCone } from "../../../src/firing/heat-work.ts";
import { findConeAt } from "../../../src/firing/place.ts";
import type { Stretch } from "../../../src/firing/witness.ts";
import { type ConeRange, formatConeRange } from "../../../src/terms/cones.ts";

/** A place on the line, to the nearest quarter: `cone 6`, `cone 5½`, `between cone 5 and cone 6`. */
export function placeWords(place: number): string {
  const quarter = Math.round(place * 4) / 4;
  const exact = findConeAt(quarter);
  if (exact) return `cone ${exact}`;
  const [below, above] = [findConeAt(Math.floor(quarter)), findConeAt(Math.ceil(quarter))];
  if (below && above) return `between cone ${below} and cone ${above}`;
  return quarter < 0 ? "cooler than cone 022" : "hotter than cone 14";
}

/** What a clay or a glaze is for: `cone 6`, `cones 5–6`. */
export function coneRangeWords(range: ConeRange): string {
  return `cone${range.from === range.to ? "" : "s"} ${formatConeRange(range)}`;
}

/** `cone 6`, `cone 6 or hotter`, `cone 4½ to cone 6`. */
export function stretchWords({ low, high }: Stretch): string {
  if (low === high) return placeWords(low);
  if (high === Number.POSITIVE_INFINITY)
    return low === Number.NEGATIVE_INFINITY ? "no cone" : `${placeWords(low)} or hotter`;
  if (low === Number.NEGATIVE_INFINITY) return `${placeWords(high)} or cooler`;
  return `${placeWords(low)} to ${placeWords(high)}`;
}

/**
 * An equivalent cone, to the quarter of a cone that the reckoning is good for: `cone 6`, `just over
 * cone 6`, `halfway from cone 6 to cone 7`, `just under cone 7`.
 */
export function equivalentConeWords({ cone, next, fraction }: EquivalentCone): string {
  if (!cone) return `cooler than cone ${next}`;
  if (!next) return `cone ${cone} or hotter`;
  const halfway = `halfway from cone ${cone} to cone ${next}`;
  const words = [`cone ${cone}`, `just over cone ${cone}`, halfway, `just under cone ${next}`];
  return words[Math.round(fraction * 4)] ?? `cone ${next}`;
}

/** `just over cone 6`; `cone 6½ to cone 9` where a hold leaves it open. */
export function reachedWords({ equivalentCone, atLeast, openRange }: HeatReached): string {
  const words = equivalentConeWords(equivalentCone);
  if (atLeast) return `at least ${words}`;
  if (!openRange) return words;
  const { from, to } = openRange;
  return to ? `cone ${from} to cone ${to}` : `cone ${from} or hotter`;
}

/** What an account of a firing says: of aim and witness a stretch, of log and programme a heat. */
export function accountWords(
  account: Stretch & { readonly reached?: HeatReached | null | undefined },
): string {
  return account.reached ? reachedWords(account.reached) : stretchWords(account);
}

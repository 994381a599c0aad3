/** A kiln in words. */
import type { CatalogueKiln, KilnShelf } from "../../../src/catalogue/kilns/kilns.ts";
import { article, capital, count, formatDay, listed } from "../english/numbers.ts";
import { coneCount } from "../tile/control.ts";
import { shelfWords } from "../tile/steps.ts";

/** `An electric kiln with 12 firings here, 14 September 2025 to 15 November 2026, and one to come.` */
export function kilnSentence({ heatedBy, firings }: CatalogueKiln): string {
  const days = firings.flatMap(({ on }) => (on === null ? [] : [on]));
  const [first, last] = [days[0], days.at(-1)];
  const kind = listed(heatedBy, "or");

  const span =
    first && last
      ? first === last
        ? `, on ${formatDay(first)}`
        : `, ${formatDay(first)} to ${formatDay(last)}`
      : "";
  const toCome = firings.length - days.length;
  const begin = days.length > 0 ? `${count(days.length, "firing")} here${span}` : "no firing yet";
  return `${article(kind)} ${kind ? `${kind} kiln` : "kiln"} with ${begin}${toCome > 0 ? `, and ${toCome} to come` : ""}.`;
}

/** How even it fires, in one sentence; `null` where no two shelves were read together. */
export function tiltSentence({ tilt, shelves }: CatalogueKiln): string | null {
  if (!tilt) return shelves.length > 1 ? "All shelves have read alike." : null;
  const { hotter, cooler, times, firings, most } = tilt;
  return `In ${times} of ${count(firings, "firing")} the ${shelfWords(cooler)} stayed cooler than the ${shelfWords(hotter)}, by ${times > 1 ? "up to " : ""}${coneCount(most)}.`;
}

/** `as aimed`, `half a cone cooler`, `1½ cones hotter` */
export function offWords(cones: number): string {
  if (Math.abs(cones) < 0.25) return "as aimed";
  return `${coneCount(cones)} ${cones > 0 ? "hotter" : "cooler"}`;
}

/** `from 1½ cones cooler to as aimed`; once alone: the same as the middle. */
export function rangeWords({ coolest, hottest }: KilnShelf): string {
  const [low, high] = [offWords(coolest), offWords(hottest)];
  return low === high ? "always" : `from ${low} to ${high}`;
}

export function shelfTitle(shelf: string): string {
  return capital(shelfWords(shelf));
}

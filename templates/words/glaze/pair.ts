/** Two glazes on each other, in words: what their order did, and what is not known of them. */

import type { Beside } from "../../../src/catalogue/apart.ts";
import type { ColourTrust } from "../../../src/catalogue/colours/trust.ts";
import type { NearestSwap, OrderOfPair } from "../../../src/catalogue/pairs-order.ts";
import type { PairCoats } from "../../../src/catalogue/pairs-table.ts";
import type { CatalogueTile } from "../../../src/catalogue/tiles.ts";
import type { Aspect } from "../../../src/likeness/make-up.ts";
import type { KindOfGlaze } from "../../../src/terms/choices.ts";
import { article, capital, count, listed } from "../english/numbers.ts";
import { didSentence } from "../tile/asked.ts";
import { besidesSentence, colourDifferenceSentence } from "../tile/change.ts";
import { aspectWords, unwrittenWords } from "../tile/likeness.ts";
import { againSentence, lookWords } from "../tile/outcome.ts";
import { glazeKind } from "./glaze.ts";

interface Names {
  readonly over: string;
  readonly under: string;
}

/** `2 coats of Chalk, 2 of Oilskin`, whichever is on top. */
export function pairCoatsWords(coats: PairCoats | null, { over, under }: Names): string {
  if (coats === null) return "Coats not recorded, or not the same number all over";
  return `${count(coats.over, "coat")} of ${over}, ${coats.under} of ${under}`;
}

/** What the order did as a whole, no surer than the number of comparisons. */
export function orderSentence(
  { swaps, did, unknown, nearest }: OrderOfPair,
  names: Names,
  reversedTiles: number,
): string {
  if (swaps.length === 1)
    return `One tile of each order, alike in all else that was written down: it may be chance.${unknownWords(unknown)}`;
  if (swaps.length > 1)
    return didSentence({ did, unknown }, "Where only the order differs", "pair");
  const other = `${names.under} over ${names.over}`;
  if (reversedTiles === 0) return `Not known: ${other} has not been tested yet.`;
  return nearest
    ? `Not known: no two tiles differ in the order alone. ${nearestSentence(nearest)}`
    : "Not known: no result of both is recorded.";
}

function unknownWords(unknown: readonly Aspect[]): string {
  return unknown.length > 0 ? ` ${capital(unwrittenWords(unknown))}.` : "";
}

/** `The nearest are A and B, but they also differ in the clay and the shape.` */
function nearestSentence({ tile, other, differ, unknown }: NearestSwap): string {
  const besides = [
    differ.length > 0 && `also differ in ${listed(differ.map(aspectWords))}`,
    unknown.length > 0 && `do not both say ${listed(unknown.map(aspectWords))}`,
  ].filter(Boolean);
  const but = besides.length > 0 ? `, but they ${besides.join(" and ")}` : "";
  return `The nearest are ${tile.id} and ${other.id}${but}.`;
}

/** `Oilskin on top: gloss; fault: running; ran 24 mm.` */
export function onTopSentence(top: string, tile: CatalogueTile): string {
  const again = tile.again ? ` ${againSentence(tile.again)}` : "";
  return `${top} on top: ${lookOf(tile)}.${again}`;
}

/** The colours of two tiles that differ in their order, and what else was not the same. */
export function besidesOfSwap(beside: Beside, trust: ColourTrust | null): string {
  const colours = colourDifferenceSentence(beside.deltaE00, trust);
  return [colours || "The colours were not both measured.", besidesSentence(beside)]
    .filter(Boolean)
    .join(" ");
}

function lookOf({ surface, effects, faults, run, results }: CatalogueTile): string {
  const looked = results.some((result) => result.faults !== undefined);
  const none = looked && faults.length === 0 ? (["none"] as const) : [];
  return (
    lookWords({ surface, effects, faults: [...faults, ...none], run: run ?? undefined }) ||
    "not described"
  );
}

/** Which of two glazes nobody here can tell all cautions of; nothing where both are known. */
export function notAllKnown(
  glazes: readonly { readonly name: string; readonly isKnown: boolean }[],
): string {
  const unknown = glazes.filter(({ isKnown }) => !isKnown).map(({ name }) => name);
  if (unknown.length === 0) return "";
  return `Not all that is in ${listed(unknown)} is known here, so this list may not be whole: read the label and the safety sheet.`;
}

interface Melting {
  readonly name: string;
  readonly kind: KindOfGlaze;
  /** Whether its analysis is known. */
  readonly isKnown: boolean;
  /** Of a glaze mixed here, why it is not. */
  readonly why: string | null;
}

/** Why the melt of two is not worked out. */
export function noMeltSentence(glazes: readonly Melting[]): string {
  return glazes
    .map(({ name, kind, isKnown, why }) => {
      if (kind !== "glaze")
        return `${name} is ${article(glazeKind(kind)).toLowerCase()} ${glazeKind(kind)}, not a glaze that melts through.`;
      if (isKnown) return "";
      return why ?? `${name} is bought, and only its maker knows what is in it.`;
    })
    .filter(Boolean)
    .join(" ");
}

/** Measured colour in words, and how far a difference between two colours can be trusted. */
import type { ColourTrust } from "../../../src/catalogue/colours/trust.ts";
import { roundDifference } from "../../../src/colour/difference.ts";
import { largeColours } from "../../../src/colour/large-colours.ts";
import type { MeasuredColour } from "../../../src/colour/measure.ts";
import type { ColourName } from "../../../src/colour/name.ts";
import { capital, count, listed } from "../english/numbers.ts";

/**
 * What stands wherever a colour difference is shown: `Tiles made and fired alike were measured up
 * to 7 apart here (CIEDE2000; 12 tiles of 5 kinds), so a smaller difference means nothing.`
 */
export function trustSentence(trust: ColourTrust | null): string {
  if (trust === null)
    return "No two tiles made and fired alike have been measured here yet, so nobody can say which colour differences count.";
  const { difference, tiles, kinds } = trust;
  const evidence = `${count(tiles, "tile")} of ${count(kinds, "kind")}`;
  return `Tiles made and fired alike were measured up to ${roundDifference(difference)} apart here (CIEDE2000; ${evidence}), so a smaller difference means nothing.`;
}

/** `Blue, its hue corrected to the grey card.`, `Between grey and green, …` */
export function colourSentence(colour: MeasuredColour): string {
  return `${namedColours(colour)}, ${cardWords(colour.greyCard)}.`;
}

/** What people would call the large colours of a tile: it is found under each of these words. */
function namedColours(colour: MeasuredColour): string {
  const all = largeColours(colour).map(({ families }) => families);
  // What is grey here and between white and grey there is told by the second.
  const wider = all.filter(
    (own) =>
      !all.some((other) => other.length > own.length && own.every((it) => other.includes(it))),
  );
  const named = [...new Set(wider.map(betweenWords))];
  const [only = ""] = named;
  return named.length === 1 ? capital(only) : `Several colours (${named.join("; ")})`;
}

/** `blue`, `between grey and green` */
function betweenWords(families: readonly ColourName[]): string {
  return families.length === 1 ? String(families[0]) : `between ${listed(families)}`;
}

/** What the light of the photograph was set right by, or why it was not. */
function cardWords(card: MeasuredColour["greyCard"]): string {
  if (card === null) return "as photographed, with no grey card to correct it by";
  if (card.used) return usedCard[card.exposure];
  return `as photographed: ${uselessCard[card.because]}`;
}

const usedCard = {
  "as-taken": "its hue corrected to the grey card",
  corrected: "its hue and brightness corrected to the grey card",
  "not-a-grey-cards":
    "its hue corrected to the card, its brightness not: the card is not a mid grey one",
};

const uselessCard = {
  "burnt-out": "the grey card is burnt out",
  coloured: "what is in the grey card’s place is not grey",
  dark: "the grey card is in the dark",
};

/**
 * How far the glaze differs from its own mean, and how much of it the camera could not tell:
 * `Average variation across the glaze: 4. 8 per cent of it is too bright or …`
 */
export function spreadSentences({ spread, clipped }: MeasuredColour): readonly string[] {
  const told = [`Average variation across the glaze: ${roundDifference(spread)}.`];
  if (clipped >= leastClipped)
    told.push(
      `${Math.round(clipped * 100)} per cent of it is too bright, too dark or too strong for the camera: its true colour may be further out.`,
    );
  return told;
}

/** Below this share a burnt-out or black spot changes nothing that is shown. */
const leastClipped = 0.02;

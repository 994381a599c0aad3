/** Measured colour in words, and how far a difference between two colours can be trusted. */
import type { ColourTrust } from "../../../src/catalogue/colours/trust.ts";
import { roundDifference } from "../../../src/colour/difference.ts";
import type { MeasuredColour } from "../../../src/colour/measure.ts";
import { capital, count } from "../english/numbers.ts";

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

/** `Blue, its hue corrected to the grey card.` */
export function colourSentence({ name, greyCard }: MeasuredColour): string {
  return `${capital(name)}, ${cardWords(greyCard)}.`;
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

/** Measured colour in words, and how far a difference between two colours can be trusted. */
import type { ColourTrust } from "../../../src/catalogue/colours/trust.ts";
import { roundDifference } from "../../../src/colour/difference.ts";
import type { MeasuredColour } from "../../../src/colour/measure.ts";
import { capital, count } from "../english/numbers.ts";

/**
 * What stands wherever a colour difference is shown: `Tiles made and fired alike were measured up
 * to 7 apart here (CIEDE2000; 12 tiles of 5 kinds): a smaller difference means nothing.`
 */
export function trustSentence(trust: ColourTrust | null): string {
  if (trust === null)
    return "No two tiles here that were made and fired alike have been measured yet, so nobody can say which colour difference means something.";
  const { difference, tiles, kinds } = trust;
  const evidence = `${count(tiles, "tile")} of ${count(kinds, "kind")}`;
  return `Tiles made and fired alike were measured up to ${roundDifference(difference)} apart here (CIEDE2000; ${evidence}): a smaller difference means nothing.`;
}

/** `Blue, put right by the grey card.` */
export function colourSentence({ name, greyCard }: MeasuredColour): string {
  return `${capital(name)}, ${cardWords(greyCard)}.`;
}

/** What the light of the photograph was set right by, or why it was not. */
function cardWords(card: MeasuredColour["greyCard"]): string {
  if (card === null) return "as photographed: no grey card tells what the light did to it";
  if (card.used) return usedCard[card.exposure];
  return `as photographed: ${uselessCard[card.because]}`;
}

const usedCard = {
  "as-taken": "put right by the grey card",
  corrected: "put right by the grey card in light and exposure",
  "not-a-grey-cards":
    "put right by the card in hue alone: the card is not a mid grey one, so it tells nothing of lightness",
};

const uselessCard = {
  "burnt-out": "the grey card is burnt out",
  coloured: "what lies where the grey card should be is not grey",
  dark: "the grey card lies in the dark",
};

/**
 * How far the glaze differs from its own mean, and how much of it the camera could not tell:
 * `Within it the colour differs by 4 on average. 8 per cent of it is at the end of …`
 */
export function spreadSentences({ spread, clipped }: MeasuredColour): readonly string[] {
  const told = [`Within it the colour differs by ${roundDifference(spread)} on average.`];
  if (clipped >= leastClipped)
    told.push(
      `${Math.round(clipped * 100)} per cent of it is at the end of what the camera could tell: its true colour may lie beyond.`,
    );
  return told;
}

/** Below this share a burnt-out or black spot changes nothing that is shown. */
const leastClipped = 0.02;

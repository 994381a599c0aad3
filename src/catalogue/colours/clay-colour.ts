/** The colour of a fired clay, which no photograph was measured for. */
import { type Lab, linearToLab } from "../../colour/cielab.ts";
import { hexToLinear } from "../../colour/srgb.ts";

/**
 * Fired clays by the words that potters describe them with, whole ones and those in -ish; the first
 * that is found counts, so that Standard is not tan and fired is not red. Common
 * practice, no source: they paint a section, and tell which of two clays is nearer to a third.
 */
const clays: readonly (readonly [word: string, colour: string])[] = [
  ["off[- ]?white", "#e9e4d8"],
  ["white", "#efece6"],
  ["cream", "#e8dfc8"],
  ["buff", "#d3bd98"],
  ["orange", "#c27a4e"],
  ["red", "#a85d3f"],
  ["grey", "#a9a59e"],
  ["gray", "#a9a59e"],
  ["brown", "#7d5a43"],
  ["black", "#3a3633"],
  ["tan", "#c6a57d"],
  ["pink", "#d9b3a2"],
];

const patterns = clays.map(([word, colour]) => ({
  word: new RegExp(`(?<!\\p{L})${word}(?:d?ish)?(?!\\p{L})`, "iu"),
  colour,
}));

/** A clay's colour by what its studio calls it, as `#rrggbb`; null where no word of it is known. */
export function clayColour(words: string | null): string | null {
  const places = patterns
    .map(({ word, colour }) => ({ at: (words ?? "").search(word), colour }))
    .filter(({ at }) => at >= 0)
    .sort((a, b) => a.at - b.at);
  return places[0]?.colour ?? null;
}

/** The same in CIELAB. */
export function clayLab(words: string | null): Lab | null {
  const colour = clayColour(words);
  return colour === null ? null : linearToLab(hexToLinear(colour));
}

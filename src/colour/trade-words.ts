/**
 * Words of the trade for colours, narrower than a family: what each means here. Common practice, no
 * source: studios differ, so they only help to find tiles and are shown on none.
 */
import { type ColourName, familiesOf } from "./name.ts";
import type { Oklab } from "./oklab.ts";

/** What a word means: some families, and how light and how strong they are, in OKLab. */
export interface TradeWord {
  readonly word: string;
  readonly families: readonly ColourName[];
  /** From 0 to 1; any where left out. */
  readonly lightness?: readonly [from: number, to: number];
  /** Chroma; any where left out. */
  readonly strength?: readonly [from: number, to: number];
}

/** Lightness, as the page of colours names it. */
const [pale, light, deep, dark] = [
  [0.8, 1],
  [0.66, 1],
  [0, 0.5],
  [0, 0.38],
] as const;
const middle = [0.42, 0.72] as const;
const [soft, strong] = [
  [0, 0.08],
  [0.085, 1],
] as const;

export const tradeWords: readonly TradeWord[] = [
  { word: "aqua", families: ["blue-green"], lightness: light },
  { word: "aubergine", families: ["purple"], lightness: dark },
  { word: "brick", families: ["brown", "red"], lightness: middle },
  { word: "buff", families: ["brown", "cream"], lightness: light },
  { word: "caramel", families: ["amber", "brown"], lightness: middle },
  { word: "celadon", families: ["blue-green", "green"], lightness: light, strength: soft },
  { word: "charcoal", families: ["black", "grey"], lightness: dark },
  { word: "chocolate", families: ["brown"], lightness: dark },
  { word: "cobalt", families: ["blue"], lightness: deep, strength: strong },
  { word: "duck egg", families: ["blue", "blue-green"], lightness: pale, strength: soft },
  { word: "gold", families: ["amber"] },
  { word: "gray", families: ["grey"] },
  { word: "honey", families: ["amber"] },
  { word: "ivory", families: ["cream", "white"], lightness: pale },
  { word: "jade", families: ["blue-green", "green"], lightness: middle },
  { word: "khaki", families: ["olive"], lightness: [0.5, 1] },
  { word: "lavender", families: ["purple"], lightness: light },
  { word: "lilac", families: ["purple"], lightness: light },
  { word: "mint", families: ["green"], lightness: pale },
  { word: "moss", families: ["green", "olive"], lightness: [0, 0.6] },
  { word: "mustard", families: ["amber", "yellow"], lightness: [0.6, 0.85] },
  { word: "navy", families: ["blue"], lightness: dark },
  { word: "ochre", families: ["amber"] },
  { word: "oxblood", families: ["red"], lightness: deep },
  { word: "peach", families: ["orange", "pink"], lightness: light },
  { word: "plum", families: ["purple"], lightness: deep },
  { word: "rose", families: ["pink"] },
  { word: "rust", families: ["brown", "orange", "red"], lightness: middle, strength: strong },
  { word: "sage", families: ["green"], lightness: [0.5, 0.85], strength: soft },
  { word: "sea green", families: ["blue-green"], strength: soft },
  { word: "sky", families: ["blue"], lightness: light },
  { word: "slate", families: ["blue", "grey"], lightness: middle, strength: [0.01, 0.05] },
  { word: "tan", families: ["brown"], lightness: [0.6, 0.84] },
  { word: "teal", families: ["blue-green"], lightness: [0, 0.68] },
  { word: "terracotta", families: ["brown", "orange"], lightness: middle, strength: strong },
  { word: "turquoise", families: ["blue-green"], lightness: [0.55, 1], strength: [0.06, 1] },
  { word: "violet", families: ["purple"] },
];

/**
 * The words of the trade that a colour may be looked for by.
 *
 * @param families those that it is found under
 */
export function tradeWordsFor(
  colour: Oklab,
  families: readonly ColourName[] = familiesOf(colour),
): readonly string[] {
  const chroma = Math.hypot(colour[1], colour[2]);
  return tradeWords
    .filter(
      (meant) =>
        meant.families.some((name) => families.includes(name)) &&
        isWithin(colour[0], meant.lightness) &&
        isWithin(chroma, meant.strength),
    )
    .map(({ word }) => word);
}

function isWithin(value: number, span: readonly [number, number] | undefined): boolean {
  return span === undefined || (value >= span[0] && value <= span[1]);
}

/** The colours of a tile that a potter would name: each that covers much of it, never a mean of them. */
import { type Lab, linearToLab } from "./cielab.ts";
import { type ColourName, familiesOf } from "./name.ts";
import { linearToOklab } from "./oklab.ts";
import type { PaletteColour } from "./palette.ts";
import { hexToLinear } from "./srgb.ts";
import { tradeWordsFor } from "./trade-words.ts";

/** A colour that covers much of a tile. */
export interface LargeColour {
  readonly hex: string;
  readonly lab: Lab;
  /** What people would call it, the likeliest first. */
  readonly families: readonly ColourName[];
  /** Narrower words that it may be looked for by. */
  readonly words: readonly string[];
}

/** What is measured of a tile's colours: its palette, the largest first, and the mean. */
interface Coloured {
  readonly palette: readonly PaletteColour[];
  readonly hex: string;
}

/** A fifth of a tile is seen from across the room; its largest colour is, however small. */
const leastShare = 0.2;

/** The large colours of a tile, the largest first. */
export function largeColours({ palette, hex }: Coloured): readonly LargeColour[] {
  const large = palette.filter(({ share }, place) => place === 0 || share >= leastShare);
  const hexes = large.length > 0 ? large.map((each) => each.hex) : [hex];
  return hexes.map((of) => {
    const light = hexToLinear(of);
    const oklab = linearToOklab(light);
    const families = familiesOf(oklab);
    return { hex: of, lab: linearToLab(light), families, words: tradeWordsFor(oklab, families) };
  });
}

/** The families that a tile is found under: those of its large colours, the largest first. */
export function familiesOnTile(colour: Coloured): readonly ColourName[] {
  return [...new Set(largeColours(colour).flatMap(({ families }) => families))];
}

/** The plate of all colours, in words. */
import type { ColourPlate } from "../../../src/catalogue/colours/colour-plate.ts";
import { count, grouped, listed } from "../english/numbers.ts";

/** The bands of lightness, the lightest first: what stands before a colour's name. */
export const bandWords: readonly string[] = ["pale", "light", "mid", "deep", "dark"];

/** What the page is, in one sentence. */
export const plateSentence =
  "Every measured tile by the colour of its glaze: each row a hue, from pale on the left to dark on the right.";

/** `150 tiles are measured. 8 tiles have no photograph that could be measured. None is purple.` */
export function plateCounts({ measured, unmeasured, absent }: ColourPlate): string {
  const told = [
    `${count(measured, "tile is", "tiles are")} measured.`,
    unmeasured > 0 &&
      `${count(unmeasured, "tile has", "tiles have")} no photograph that could be measured.`,
    measured > 0 && absent.length > 0 && `None is ${listed(absent, "or")}.`,
  ];
  return told.filter(Boolean).join(" ");
}

/** Where nothing is measured: what would fill the page. */
export const plateEmpty =
  "No tile is measured yet. Tiles with a photograph of the result show here by their colour.";

/** The words under the plate. */
export const plateFoot =
  "A tile stands under each name that one person in five would give it, and once for each large colour on it. Screens and lamps differ; trust the tile, not the screen.";

/** `15 of 40 shown` */
export function shownWords(shown: number, tiles: number): string {
  return `${shown} of ${grouped(tiles)} shown`;
}

/** Contrast of two colours, and the nearest that has enough of it on the paper of every page. */
import { linearToOklab, type Oklab, oklabToLinear } from "./oklab.ts";
import { hexToLinear, type LinearRgb, linearToHex } from "./srgb.ts";

/** The paper of a page in light and in dark: OKLCH lightness without chroma, as `tokens.css` has it. */
export const papers = { light: 0.97, dark: 0.16 } as const;

/** What a line or a mark needs: WCAG 2.2, success criterion 1.4.11, "Non-text Contrast". */
export const contrastOfMarks = 3;

/** Relative luminance by WCAG 2.2. */
function luminance([red, green, blue]: LinearRgb): number {
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** Contrast ratio by WCAG 2.2, from 1 to 21. */
export function contrast(one: LinearRgb, other: LinearRgb): number {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}

/** The contrast of a colour, `#rrggbb`, on the paper of each scheme. */
export function contrastOnPapers(hex: string): { readonly light: number; readonly dark: number } {
  const on = (lightness: number) => contrast(hexToLinear(hex), oklabToLinear([lightness, 0, 0]));
  return { light: on(papers.light), dark: on(papers.dark) };
}

/** Whether a line of this colour is seen on both papers. */
export function isSeenOnBoth(hex: string): boolean {
  const { light, dark } = contrastOnPapers(hex);
  return light >= contrastOfMarks && dark >= contrastOfMarks;
}

/** How finely lighter and darker shades are tried. */
const steps = 400;

/** The shade nearest in lightness, of the same hue, that is seen on both papers; itself where it is. */
export function nearestSeen(hex: string): string {
  const colour = linearToOklab(hexToLinear(hex));
  const shades = Array.from({ length: steps + 1 }, (_, i) => i / steps)
    .sort((a, b) => Math.abs(a - colour[0]) - Math.abs(b - colour[0]))
    .map((lightness) => shadeOf(colour, lightness));
  return isSeenOnBoth(hex) ? hex : (shades.find(isSeenOnBoth) ?? "#808080");
}

/** A colour made lighter or darker, and as much greyer as a screen needs to show it. */
function shadeOf([, a, b]: Oklab, lightness: number): string {
  const greyer = Array.from({ length: 21 }, (_, i) => 1 - i / 20);
  const shown = greyer
    .map((share): LinearRgb => oklabToLinear([lightness, a * share, b * share]))
    .find((rgb) => rgb.every((light) => light >= -0.0005 && light <= 1.0005));
  return linearToHex(shown ?? oklabToLinear([lightness, 0, 0]));
}

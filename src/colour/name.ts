import type { Oklab } from "./oklab.ts";

/** The eleven basic colour terms of English (B. Berlin and P. Kay, Basic Color Terms, 1969). */
export type ColourName =
  | "black"
  | "blue"
  | "brown"
  | "green"
  | "grey"
  | "orange"
  | "pink"
  | "purple"
  | "red"
  | "white"
  | "yellow";

/**
 * A plain name for a colour. Where one term ends and the next begins nobody can say; these bounds
 * in lightness, chroma and hue angle of OKLab are a rule of our own. Of the colours that people in a
 * large survey gave a name ending in a basic term they name 85 of 100 alike (the others are such as
 * "greenish blue"). They give every basic term's colour in CSS its own name, but for CSS's brown,
 * which people call a red; and they lean towards what potters call glazes (a pale cream is white).
 */
export function nameColour(colour: Oklab): ColourName {
  const chroma = Math.hypot(colour[1], colour[2]);
  const degrees = (Math.atan2(colour[2], colour[1]) * 180) / Math.PI;
  const hue = (degrees + 360) % 360;
  return nameNeutral(colour[0], chroma, hue) ?? nameHue(colour[0], chroma, hue);
}

function nameNeutral(lightness: number, chroma: number, hue: number): ColourName | undefined {
  if (lightness > 0.9 && chroma < 0.045) return "white";
  if (lightness < 0.28 && chroma < 0.045) return "black";
  if (chroma >= leastChroma(lightness, hue)) return undefined;
  return lightness > 0.88 ? "white" : lightness < 0.32 ? "black" : "grey";
}

/** A dark colour shows its hue sooner than a light one; a light one that is cool sooner than a warm. */
function leastChroma(lightness: number, hue: number): number {
  const isCool = hue > 150 && hue < 290;
  const ofLight = isCool ? 0.03 - 0.1 * Math.max(0, lightness - 0.75) : 0.03;
  return Math.min(ofLight, 0.06 * lightness);
}

function nameHue(lightness: number, chroma: number, hue: number): ColourName {
  if (hue < 25 || hue >= 335) return nameCrimson(lightness, chroma, hue);
  if (hue < 85) return nameOrange(lightness, chroma, hue);
  if (hue < 118) return nameYellow(lightness, hue);
  if (hue < 190) return "green";
  return hue < 285 ? "blue" : "purple";
}

function nameCrimson(lightness: number, chroma: number, hue: number): ColourName {
  if (lightness > 0.65 || (hue >= 335 && lightness > 0.52)) return "pink";
  if (chroma < 0.06) return "brown";
  return hue >= 335 && hue < 350 ? "purple" : "red";
}

function nameOrange(lightness: number, chroma: number, hue: number): ColourName {
  if (hue < 38 && chroma >= 0.14) return "red";
  if (hue < 50 && lightness > 0.72) return chroma < 0.155 ? "pink" : "orange";
  if (lightness > 0.86 && chroma < 0.1) return hue > 70 ? "yellow" : "pink";
  const isBright = chroma >= 0.15 ? lightness >= 0.57 : chroma >= 0.1 && lightness >= 0.7;
  return isBright ? "orange" : "brown";
}

function nameYellow(lightness: number, hue: number): ColourName {
  if (lightness > 0.66) return "yellow";
  return hue < 100 ? "brown" : "green";
}

import type { Lab } from "./cielab.ts";

/**
 * CIEDE2000 between two colours in CIELAB, all weights 1 (ISO/CIE 11664-6). Symmetric. 1 is about
 * what a trained eye just tells apart side by side.
 *
 * Formula and the numbering of its steps: G. Sharma, W. Wu, E.N. Dalal, The CIEDE2000
 * color-difference formula, Color Research and Application 30 (2005) 21-30.
 */
export function differenceCiede2000(one: Lab, other: Lab): number {
  const [first, second] = stretchRedGreen(one, other);
  const meanLightness = (one[0] + other[0]) / 2;
  const meanChroma = (first.chroma + second.chroma) / 2;
  const [hueStep, meanHue] = compareHues(first, second);

  const lightness = (other[0] - one[0]) / weighLightness(meanLightness);
  const chroma = (second.chroma - first.chroma) / (1 + 0.045 * meanChroma);
  const hueDifference = 2 * Math.sqrt(first.chroma * second.chroma) * sine(hueStep / 2);
  const hue = hueDifference / (1 + 0.015 * meanChroma * weighHue(meanHue));
  const rotation = rotateBlues(meanChroma, meanHue) * chroma * hue;
  return Math.sqrt(lightness ** 2 + chroma ** 2 + hue ** 2 + rotation);
}

interface Polar {
  chroma: number;
  /** In degrees, 0 to 360; 0 for a neutral. */
  hue: number;
}

/** Steps 1: a* is stretched where both colours are near neutral. Equations 2 to 7. */
function stretchRedGreen(one: Lab, other: Lab): [Polar, Polar] {
  const mean = (chromaOf(one[1], one[2]) + chromaOf(other[1], other[2])) / 2;
  const stretch = 1 + 0.5 * (1 - Math.sqrt(shareOfSeventh(mean)));
  return [toPolar(one[1] * stretch, one[2]), toPolar(other[1] * stretch, other[2])];
}

function toPolar(a: number, b: number): Polar {
  if (a === 0 && b === 0) return { chroma: 0, hue: 0 };
  const degrees = (Math.atan2(b, a) * 180) / Math.PI;
  return { chroma: chromaOf(a, b), hue: degrees < 0 ? degrees + 360 : degrees };
}

// A wall of 10,000 tiles is put in order at one go: `Math.hypot` and `** 7` would double the time.

function chromaOf(a: number, b: number): number {
  return Math.sqrt(a * a + b * b);
}

/** C⁷ / (C⁷ + 25⁷) of a chroma C. */
function shareOfSeventh(chroma: number): number {
  const third = chroma * chroma * chroma;
  const seventh = third * third * chroma;
  return seventh / (seventh + 6103515625);
}

/** The step from one hue to the other the shorter way, and their mean. Equations 10 and 14. */
function compareHues(first: Polar, second: Polar): [step: number, mean: number] {
  const sum = first.hue + second.hue;
  if (first.chroma * second.chroma === 0) return [0, sum];
  const step = second.hue - first.hue;
  if (Math.abs(step) <= 180) return [step, sum / 2];
  return [step > 0 ? step - 360 : step + 360, sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2];
}

/** Equation 18. */
function weighLightness(mean: number): number {
  const fromMiddle = (mean - 50) ** 2;
  return 1 + (0.015 * fromMiddle) / Math.sqrt(20 + fromMiddle);
}

/** Equation 15. */
function weighHue(mean: number): number {
  return (
    1 -
    0.17 * cosine(mean - 30) +
    0.24 * cosine(2 * mean) +
    0.32 * cosine(3 * mean + 6) -
    0.2 * cosine(4 * mean - 63)
  );
}

/** Equations 16, 17 and 21: chroma and hue lean on one another among the blues. */
function rotateBlues(meanChroma: number, meanHue: number): number {
  const angle = 30 * Math.exp(-(((meanHue - 275) / 25) ** 2));
  const strength = 2 * Math.sqrt(shareOfSeventh(meanChroma));
  return -strength * sine(2 * angle);
}

function sine(degrees: number): number {
  return Math.sin((degrees * Math.PI) / 180);
}

function cosine(degrees: number): number {
  return Math.cos((degrees * Math.PI) / 180);
}

/** A colour difference as it is shown: in whole units, but for the smallest. */
export function roundDifference(difference: number): string {
  return difference > 0 && difference < 1 ? "less than 1" : String(Math.round(difference));
}

/**
 * What people call a colour: its families, in words of the trade. Where one ends and the next begins
 * nobody can say, so a colour between two belongs to both.
 *
 * The bounds are a rule of our own in lightness, chroma and hue angle of OKLab, set by R. Munroe's
 * survey of 2010 (some 200,000 people; the colour of each of the 949 names they used most, CC0). It
 * was answered on bright screens, where what hardly differs from grey is called grey. A tile is seen
 * on neutral ground, where the eye sees less: so grey ends sooner here than there.
 */
import type { Oklab } from "./oklab.ts";

/** Round the circle of hues, then what has none. */
export const families = [
  "pink",
  "red",
  "orange",
  "brown",
  "amber",
  "cream",
  "yellow",
  "olive",
  "green",
  "blue-green",
  "blue",
  "purple",
  "white",
  "grey",
  "black",
] as const;
export type ColourName = (typeof families)[number];

type Span = readonly [from: number, to: number];
const all = Number.POSITIVE_INFINITY;
/** Below this chroma nobody sees a hue; between the two some do. Dark and light colours have bounds of their own. */
const grey = 0.017;

/** One part of what is called so: lightness, chroma, and hue in degrees where it has one. */
type Part = readonly [name: ColourName, lightness: Span, chroma: Span, hue?: Span];

const parts: readonly Part[] = [
  ["white", [0.885, all], [0, 0.02]],
  ["grey", [0.32, 0.885], [0, grey]],
  ["black", [0, 0.32], [0, 0.022]],
  ["black", [0, 0.29], [0.022, 0.045]],
  ["black", [0, 0.2], [0.045, all]],
  ["cream", [0.8, all], [0.02, 0.07], [48, 118]],
  ["cream", [0.84, all], [0.07, 0.095], [48, 118]],
  ["yellow", [0.8, all], [0.095, all], [88, 118]],
  ["yellow", [0.7, 0.8], [0.14, all], [98, 118]],
  ["amber", [0.8, all], [0.095, 0.13], [66, 88]],
  ["amber", [0.66, 0.8], [0.095, 0.13], [64, 104]],
  ["amber", [0.8, all], [0.13, all], [76, 88]],
  ["amber", [0.66, 0.8], [0.13, all], [76, 104]],
  ["amber", [0.56, 0.66], [0.11, all], [70, 100]],
  ["orange", [0.8, all], [0.095, 0.13], [48, 66]],
  ["orange", [0.66, all], [0.13, all], [40, 76]],
  ["orange", [0.58, 0.66], [0.14, all], [40, 66]],
  ["orange", [0.62, 0.84], [0.12, all], [34, 40]],
  ["brown", [0.66, 0.8], [grey, 0.095], [48, 104]],
  ["brown", [0.8, 0.84], [0.07, 0.095], [48, 104]],
  ["brown", [0.66, 0.8], [0.095, 0.12], [48, 64]],
  ["brown", [0.58, 0.66], [grey, 0.14], [40, 70]],
  ["brown", [0.56, 0.66], [grey, 0.11], [70, 100]],
  ["brown", [0.2, 0.58], [grey, all], [40, 70]],
  ["brown", [0.2, 0.56], [grey, all], [70, 100]],
  ["brown", [0.2, 0.62], [grey, 0.085], [5, 40]],
  ["red", [0.2, 0.5], [0.085, all], [345, 40]],
  ["red", [0.5, 0.62], [0.085, all], [14, 40]],
  ["red", [0.62, 0.7], [0.17, all], [14, 34]],
  ["pink", [0.5, 0.62], [0.085, all], [320, 14]],
  ["pink", [0.84, all], [0.02, all], [335, 48]],
  ["pink", [0.62, 0.84], [grey, 0.12], [335, 48]],
  ["pink", [0.62, 0.84], [0.12, 0.17], [335, 34]],
  ["pink", [0.7, all], [0.17, all], [335, 34]],
  ["pink", [0.7, all], [grey, all], [315, 335]],
  ["purple", [0.2, 0.62], [grey, 0.085], [285, 5]],
  ["purple", [0.2, 0.5], [0.085, all], [318, 345]],
  ["purple", [0.62, 0.7], [grey, all], [315, 335]],
  ["purple", [0.2, all], [0.085, all], [288, 318]],
  ["purple", [0.62, all], [grey, 0.085], [285, 315]],
  ["blue", [0.2, all], [grey, all], [213, 286]],
  ["blue", [0.88, all], [grey, all], [192, 213]],
  ["blue-green", [0.2, 0.88], [grey, all], [168, 213]],
  ["blue-green", [0.88, all], [grey, all], [168, 192]],
  ["green", [0.2, all], [grey, all], [124, 168]],
  ["green", [0.8, all], [grey, all], [114, 124]],
  ["green", [0.66, 0.8], [0.14, all], [116, 124]],
  ["olive", [0.2, 0.66], [grey, all], [100, 124]],
  ["olive", [0.66, 0.8], [grey, 0.14], [104, 124]],
];

/** The same as they are reckoned with: a wall of 10,000 tiles asks for many colours. */
const bounds = parts.map(([name, lightness, chroma, hue]) => ({
  name,
  lightness,
  logChroma: [Math.log(chroma[0]), Math.log(chroma[1])] as const,
  hue,
}));

/** How far on either side of a bound some still say the one, and others the other. */
const wide = { lightness: 0.07, chroma: 0.5, hue: 15 } as const;
/** Below this chroma two hues look more alike, the more so the less there is. */
const fullHue = 0.05;
const widestHue = 18;

/** A family, and the share of people who would put a colour into it, as near as the bounds tell. */
export interface Share {
  readonly name: ColourName;
  /** From 0 to 1; those of a colour add to 1. */
  readonly share: number;
}

/** Every family that somebody would put the colour into, the likeliest first. */
export function shareOut(colour: Oklab): readonly Share[] {
  const [lightness, a, b] = colour;
  const chroma = Math.max(Math.hypot(a, b), 0.002);
  const hue = ((Math.atan2(b, a) * 180) / Math.PI + 360) % 360;
  const sums = new Map<ColourName, number>();
  const logChroma = Math.log(chroma);
  for (const { name, lightness: ofLightness, logChroma: ofChroma, hue: ofHue } of bounds) {
    const inLightness = within(lightness, ofLightness, wide.lightness);
    if (inLightness === 0) continue;
    const inBoth = inLightness * within(logChroma, ofChroma, wide.chroma);
    if (inBoth === 0) continue;
    const fits = inBoth * (ofHue ? withinHue(hue, ofHue, chroma) : 1);
    if (fits > 0) sums.set(name, (sums.get(name) ?? 0) + fits);
  }
  const total = [...sums.values()].reduce((sum, fits) => sum + fits, 0);
  return [...sums]
    .map(([name, fits]) => ({ name, share: fits / total }))
    .sort((one, other) => other.share - one.share);
}

/** 1 well inside, 0 well outside, a half on either bound. */
function within(value: number, [from, to]: Span, width: number): number {
  return ramp(value - from, width) * ramp(to - value, width);
}

function withinHue(hue: number, [from, to]: Span, chroma: number): number {
  const width = Math.min(widestHue, wide.hue * Math.max(1, fullHue / chroma));
  const span = (to - from + 360) % 360;
  // Counted from the middle, so that no bound lies where the circle closes.
  const off = ((hue - from - span / 2 + 540) % 360) - 180;
  return within(off, [-span / 2, span / 2], width);
}

function ramp(inside: number, width: number): number {
  return Math.min(1, Math.max(0, inside / (2 * width) + 0.5));
}

/** A colour is found under what one in five would call it. */
const leastShare = 0.2;

/** The families that a colour is found under, the likeliest first. */
export function familiesOf(colour: Oklab): readonly ColourName[] {
  const [first, ...others] = shareOut(colour);
  const called = others.filter(({ share }) => share >= leastShare).map(({ name }) => name);
  return first ? [first.name, ...called] : [];
}

/** What most would call a colour. */
export function nameColour(colour: Oklab): ColourName {
  return familiesOf(colour)[0] ?? "grey";
}

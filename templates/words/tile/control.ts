/** What a control tile's twin tells, in words. */
import type { ControlTwin, Unlike } from "../../../src/catalogue/kilns/control.ts";
import { listed, spoken } from "../english/numbers.ts";

/**
 * `Unlike CT-01: satin, not gloss; underfired. Its shelf was 1½ cones cooler: the firing did
 * this, not the glaze.`
 */
export function twinSentence({ unlike, hotter }: ControlTwin, control: string): string {
  const told = `Unlike ${control}: ${unlike.map(unlikeWords).join("; ")}.`;
  if (hotter === null) return `${told} No cone tells whether it was the kiln or the glaze.`;
  if (Math.abs(hotter) < 1)
    return `${told} Its shelf was as hot: look at the coats, the cooling, the air and the jar.`;
  const way = hotter > 0 ? "hotter" : "cooler";
  return `${told} Its shelf was ${coneCount(hotter)} ${way}: the firing did this, not the glaze.`;
}

/** `satin, not gloss`, `too thin`, `moved 12 mm, not 3`, `another colour` */
export function unlikeWords(unlike: Unlike): string {
  switch (unlike.in) {
    case "colour":
      return "another colour";
    case "fault":
      return spoken(unlike.fault);
    case "run":
      return `moved ${unlike.run} mm, not ${unlike.model}`;
    case "surface":
      return `${unlike.surface.join(" and ")}, not ${unlike.model.join(" and ")}`;
  }
}

/** `1 cone`, `1½ cones`, `half a cone`: how far apart, without sign, to the half cone. */
export function coneCount(distance: number): string {
  const halves = Math.round(Math.abs(distance) * 2);
  if (halves === 0) return "no cone";
  if (halves === 1) return "half a cone";
  const words = `${Math.floor(halves / 2)}${halves % 2 === 1 ? "½" : ""}`;
  return words === "1" ? "1 cone" : `${words} cones`;
}

/** What the twins show taken together, in a sentence. */
export function twinsSummary(twins: readonly ControlTwin[], control: string): string {
  const odd = twins.filter(({ unlike }) => unlike.length > 0);
  if (odd.length === 0)
    return twins.length > 1
      ? `All of them came out like ${control}: kiln and glaze have kept.`
      : "It stands alone so far: twins in later loads will tell the kiln from the glaze.";
  const byKiln = odd.filter(({ hotter }) => hotter !== null && Math.abs(hotter) >= 1);
  const others = odd.filter((twin) => !byKiln.includes(twin));
  return [
    byKiln.length > 0 &&
      `${listed(byKiln.map(({ tile }) => tile))} stood where the cones were hotter or cooler too: that is the firing.`,
    others.length > 0 &&
      `${listed(others.map(({ tile }) => tile))} differ${others.length === 1 ? "s" : ""} though the cones did not: that is the glaze, its coats, the cooling or the air.`,
  ]
    .filter(Boolean)
    .join(" ");
}

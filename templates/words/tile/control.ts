/** What a control tile's twin tells, in words. */
import type { ControlTwin, Unlike } from "../../../src/catalogue/kilns/control.ts";
import { listedInShort, spoken } from "../english/numbers.ts";

/**
 * `Unlike CT-01: satin, not gloss; underfired. Its shelf was 1½ cones cooler: look at the firing
 * before the glaze.`
 */
export function twinSentence({ unlike, hotter }: ControlTwin, control: string): string {
  const told = `Unlike ${control}: ${unlike.map(unlikeWords).join("; ")}.`;
  if (hotter === null) return `${told} With no cone to compare, nobody can tell kiln from glaze.`;
  if (Math.abs(hotter) < 1)
    return `${told} Its shelf was as hot: look at the coats, the cooling, the atmosphere and the jar.`;
  const way = hotter > 0 ? "hotter" : "cooler";
  return `${told} Its shelf was ${coneCount(hotter)} ${way}: look at the firing before the glaze.`;
}

/** `satin, not gloss`, `too thin`, `ran 12 mm, not 3`, `another colour` */
export function unlikeWords(unlike: Unlike): string {
  switch (unlike.in) {
    case "colour":
      return "another colour";
    case "fault":
      return spoken(unlike.fault);
    case "run":
      return `ran ${unlike.run} mm, not ${unlike.model}`;
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
      ? `All came out like ${control}: kiln and glaze are steady.`
      : "The only one so far: twins in later loads will tell kiln from glaze.";
  const off = ({ hotter }: ControlTwin) => (hotter === null ? null : Math.abs(hotter) >= 1);
  const told = ([true, false, null] as const).map((isOff) => {
    const such = odd.filter((twin) => off(twin) === isOff).map(({ tile }) => tile);
    return such.length > 0 && `${listedInShort(such)} came out differently${whereToLook(isOff)}`;
  });
  return told.filter(Boolean).join(" ");
}

/** @param isOff whether the cone at its shelf was another; null where one is not known */
function whereToLook(isOff: boolean | null): string {
  if (isOff === null) return ", with no cone to compare.";
  return isOff
    ? " where the cones were hotter or cooler too: look at the firing first."
    : " though the cones were less than one apart: look at the glaze, its coats, the cooling and the atmosphere.";
}

/** Tiles one change apart: what changed, and what came of it. */
import type {
  Apart,
  Difference,
  NotHeldEqual,
  TwoApart,
  Uncontrolled,
} from "../../../src/catalogue/apart.ts";
import { comparedSteps, stepAt } from "../../../src/catalogue/apart.ts";
import type { ColourTrust } from "../../../src/catalogue/colours/trust.ts";
import type { CatalogueTile } from "../../../src/catalogue/tiles.ts";
import { roundDifference } from "../../../src/colour/difference.ts";
import type { CoatStep, TileStep } from "../../../src/records/archive.ts";
import { indexBy } from "../../../src/terms/index-by.ts";
import { capital, count, listed, spoken } from "../english/numbers.ts";
import { facetWords, glazeName, howMany, markName, toolName } from "./change-of-facet.ts";
import { unwrittenWords } from "./likeness.ts";
import { againSentence, lookWords } from "./outcome.ts";
import { firingName, whereWords } from "./steps.ts";

const headings: Readonly<Record<Difference, string>> = {
  none: "Made and fired alike",
  order: "In another order",
  coats: "More coats or fewer",
  way: "Put on another way",
  thickness: "Thicker or thinner",
  dipping: "Dipped longer or shorter",
  drying: "Drier or wetter underneath",
  place: "In another place",
  layer: "A layer more or less",
  glaze: "Another glaze",
  resist: "Another resist, or none",
  removal: "Wiped, scraped or left alone",
  firing: "Another kind of firing, or one more",
  cone: "Hotter or cooler",
  cooling: "Cooled another way",
  atmosphere: "Another atmosphere",
  fire: "Ash or salt in the kiln",
  bisque: "Another bisque firing",
  clay: "Another clay",
  texture: "Another texture",
  shape: "Another shape",
};

/** The heading over the tiles that differ in one thing: `More coats or fewer`. */
export function differenceHeading(difference: Difference): string {
  return headings[difference];
}

/** What is otherwise on the other tile: `The same, with 2 coats of Chalk more.` */
export function changeSentence(from: CatalogueTile, apart: Apart): string {
  return apart.change.kind === "none"
    ? "The same again."
    : `The same, ${changeWords(from, apart)}.`;
}

/** What is otherwise on the other tile: `The same but for two things: cooled slowly, not left to cool; on Dark, not Buff.` */
export function twoChangesSentence(
  from: CatalogueTile,
  { tile: to, changes: [one, other] }: Pick<TwoApart, "tile" | "changes">,
): string {
  return `The same but for two things: ${facetWords(one, from, to)}; ${facetWords(other, from, to)}.`;
}

/** Over tiles that differ in two things. */
export const twoChangesCaution =
  "Two things differ on each of these, so nobody can say which of them made the difference.";

function changeWords(from: CatalogueTile, { change, tile: to }: Apart): string {
  switch (change.kind) {
    case "more":
      return `with ${stepName(stepAt(to, change.step), to)} as well`;
    case "fewer":
      return `without ${stepName(stepAt(from, change.step), from)}`;
    case "order":
      return orderWords(to, change.steps);
    case "facet":
      return facetWords(change, from, to);
    case "none":
      return "again";
  }
}

/** `the other way round: Chalk over Soot`; of more than two layers, their new order. */
function orderWords(to: CatalogueTile, [first, last]: readonly [number, number]): string {
  const moved = comparedSteps(to).slice(first, last + 1);
  const [under, over] = moved;
  if (moved.length === 2 && under?.step === "coat" && over?.step === "coat")
    return `the other way round: ${glazeName(over, to)} over ${glazeName(under, to)}`;
  return `in another order: ${moved.map((step) => shortName(step, to)).join(", then ")}`;
}

function shortName(step: TileStep, tile: CatalogueTile): string {
  if (step.step === "coat") return glazeName(step, tile);
  return step.step === "fired" ? firingName(step.kind).toLowerCase() : markName(step);
}

/** `2 coats of Chalk at the top`, `wax resist on the motif`, `the bisque firing`. */
function stepName(step: TileStep | undefined, tile: CatalogueTile): string {
  if (step === undefined) return "a step";
  if (step.step === "fired") return `the ${firingName(step.kind).toLowerCase()}`;
  const what = step.step === "coat" ? coatName(step, tile) : toolName(step);
  return [what, whereWords(step.where)].filter(Boolean).join(" ");
}

function coatName(step: CoatStep, tile: CatalogueTile): string {
  const coats = step.coats === null ? "a layer" : howMany(step.coats, "coat");
  return `${coats} of ${glazeName(step, tile)}`;
}

/** What came of the other tile: `Satin; no fault found; ran 3 mm. Again: yes.` */
export function resultSentence({ results }: CatalogueTile): string {
  const result = results.at(-1);
  const look = result ? lookWords(result) : "";
  const again = result?.again ? againSentence(result.again) : "";
  return [look && `${capital(look)}.`, again].filter(Boolean).join(" ") || "No result recorded.";
}

/**
 * How often like tiles came out alike: `3 tiles, this one among them: satin on 2, gloss on 1; no
 * fault on all; again: yes on 2, no on 1.`
 */
export function tallySentence(tiles: readonly CatalogueTile[]): string {
  const last = tiles.flatMap(({ results }) => results.at(-1) ?? []);
  const told = [
    tally(last.map(({ surface = [] }) => listed(surface) || "surface not recorded")),
    tally(last.map(({ faults = [] }) => listed(faults.map(faultWords)) || "faults not recorded")),
    tally(last.map(({ again }) => (again ? `again: ${again}` : "again not recorded"))),
  ];
  return `${count(tiles.length, "tile")}, this one among them: ${told.join("; ")}.`;
}

function faultWords(fault: string): string {
  return fault === "none" ? "no fault" : spoken(fault);
}

/** The commonest first. */
function tally(words: readonly string[]): string {
  const counts = [...indexBy(words, (word) => [word])].map(
    ([word, all]) => [word, all.length] as const,
  );
  const [first] = counts;
  if (counts.length === 1 && first) return `${first[0]} on all`;
  return counts
    .toSorted(([, a], [, b]) => b - a)
    .map(([word, number]) => `${word} on ${number}`)
    .join(", ");
}

/** Whether two colours differ by more than like tiles do here. */
export function colourDifferenceSentence(
  deltaE00: number | null,
  trust: ColourTrust | null,
): string {
  if (deltaE00 === null) return "";
  const apart = `Colours ${roundDifference(deltaE00)} apart`;
  if (trust === null) return `${apart}; how far tiles made alike differ here is not known yet.`;
  const scatter = `(up to ${roundDifference(trust.difference)})`;
  return deltaE00 > trust.difference
    ? `${apart}: more than tiles made alike differ here ${scatter}.`
    : `${apart}: tiles made alike differ as much here ${scatter}.`;
}

const notEqual: Readonly<Record<Uncontrolled, string>> = {
  batch: "the batch of clay",
  day: "the day it was glazed",
  load: "the load",
  maker: "the maker",
  set: "the set",
  shelf: "the shelf",
};

/** `Also different: the load and the maker. Not recorded: how the kiln cooled.` */
export function besidesSentence({ uncontrolled, unknown }: NotHeldEqual): string {
  const told = [
    uncontrolled.length > 0 &&
      `Also different: ${listed(uncontrolled.map((each) => notEqual[each]))}.`,
    unknown.length > 0 && `${capital(unwrittenWords(unknown))}.`,
  ];
  return told.filter(Boolean).join(" ");
}

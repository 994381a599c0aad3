/** A strip of tiles that differ in one thing, in words: what changes along it, no surer than it is. */

import { comparedSteps } from "../../../src/catalogue/apart.ts";
import type { ColourTrust } from "../../../src/catalogue/colours/trust.ts";
import {
  apartInColour,
  type Strip,
  type StripAspect,
  type StripPlace,
} from "../../../src/catalogue/strips.ts";
import type { CatalogueTile } from "../../../src/catalogue/tiles.ts";
import { roundDifference } from "../../../src/colour/difference.ts";
import { capital, count, listed, spoken } from "../english/numbers.ts";
import { besidesSentence } from "./change.ts";
import { facetValueWords, glazeName } from "./change-of-facet.ts";
import { namesTopFirst } from "./stack.ts";
import { coatWords } from "./steps.ts";

const headings: Readonly<Record<StripAspect, string>> = {
  coats: "By coats",
  cone: "By cone",
  cooling: "By cooling",
  clay: "By clay",
};

/** `By coats`: what the tiles of a strip differ in. */
export function stripHeading(aspect: StripAspect): string {
  return headings[aspect];
}

/** `2 coats`, `cone 6`: what stands over a tile of the strip. */
export function placeWords(aspect: StripAspect, { value, tiles }: StripPlace): string {
  return facetValueWords(aspect, value, tiles[0]);
}

/**
 * What is the same on all tiles of a strip: `Mist over Soot (Soot 1 coat, brushed; Mist 2 coats,
 * brushed), Levels Buff, cone 6, in oxidation`.
 */
export function stripName(strip: Pick<Strip, "aspect" | "step" | "places">): string {
  const { aspect, step, places } = strip;
  const tile = places[0]?.tiles[0];
  if (!tile) return "";
  const layers = namesTopFirst(tile) + layerWords(tile, aspect === "coats" ? step : null);
  return [layers, ...clayAndFire(tile, aspect)].join(", ");
}

/**
 * What a tile is made of and how it was fired: `Levels Buff`, `cone 6`, `in oxidation`.
 *
 * @param differing what is not to be said of it
 */
export function clayAndFire(tile: CatalogueTile, differing?: StripAspect): readonly string[] {
  const { clay, cone, texture, shape, atmosphere } = tile;
  return [
    differing === "clay" || clay === null ? "" : clay.name,
    differing === "cone" || cone === null ? "" : `cone ${cone}`,
    atmosphere === null ? "" : facetValueWords("atmosphere", atmosphere, tile),
    texture === "smooth" ? "" : spoken(texture),
    shape === "flat" ? "" : facetValueWords("shape", shape, tile),
  ].filter((words) => words !== "");
}

/** How each layer was put on, but for the coats that differ. */
function layerWords(tile: CatalogueTile, differing: number | null): string {
  const layers = comparedSteps(tile).flatMap((each, i) =>
    each.step === "coat" ? [i === differing ? { ...each, coats: null } : each] : [],
  );
  const [only] = layers;
  if (only && layers.length === 1) return coatWords(only) && ` (${coatWords(only)})`;
  const told = layers.map((layer) => `${glazeName(layer, tile)} ${coatWords(layer)}`.trim());
  return told.length > 0 ? ` (${told.join("; ")})` : "";
}

const leads: Readonly<Record<StripAspect, string>> = {
  coats: "with ",
  cone: "at ",
  cooling: "when ",
  clay: "on ",
};

/**
 * What changes along a strip, a sentence each: `Gloss with 1 coat, satin with 2 coats.` `Ran 2 mm
 * with 1 coat, 12 mm with 2 coats.` `No fault found on all.` `Colours 12 apart; tiles made alike
 * differ by up to 5 here.` `One tile of each: it may be chance.`
 */
export function stripSentences(strip: Strip, trust: ColourTrust | null): readonly string[] {
  return [
    lookSentence(strip, surfaceOf, "surface"),
    lookSentence(strip, runOf, "run", "ran "),
    lookSentence(strip, faultsOf, "faults"),
    colourSentence(strip, trust),
    strengthSentence(strip.places),
    besidesSentence(strip),
  ].filter(Boolean);
}

/** What tiles of one place came out like; undefined where nobody wrote it down of any. */
type Look = (tiles: StripPlace["tiles"]) => string | undefined;

const surfaceOf = tallied(({ surface }) => listed(surface) || undefined);

const faultsOf = tallied(({ faults, results, later }) => {
  const looked = [...results, ...later].some((look) => look.faults !== undefined);
  if (!looked) return undefined;
  return listed(faults.map(spoken)) || "no fault found";
});

/** `12 mm`, of several that ran differently `9 to 12 mm`; who did not measure is counted. */
const runOf: Look = (tiles) => {
  const runs = tiles.flatMap(({ results }) => results.at(-1)?.run ?? []);
  if (runs.length === 0) return undefined;
  const [least, most] = [Math.min(...runs), Math.max(...runs)];
  const range = least === most ? `${least}\u00a0mm` : `${least} to ${most}\u00a0mm`;
  return runs.length === tiles.length
    ? range
    : `${range} (${runs.length} of ${tiles.length} measured)`;
};

/** `satin`, or of tiles made alike that came out differently `satin on 2 and gloss on 1`. */
function tallied(look: (tile: CatalogueTile) => string | undefined): Look {
  return (tiles) => {
    const looks = tiles.map(look);
    const kinds = [...new Set(looks)];
    if (kinds.length === 1) return kinds[0];
    const timesOf = (kind: string | undefined) => looks.filter((each) => each === kind).length;
    return kinds.map((kind) => `${kind ?? notRecorded} on ${timesOf(kind)}`).join(" and ");
  };
}

const notRecorded = "not recorded";

/** Neighbours that came out alike are told together; what nobody wrote down is no look of its own. */
function lookSentence({ aspect, places }: Strip, look: Look, name: string, lead = ""): string {
  const groups: { said: string | undefined; alike: StripPlace[] }[] = [];
  for (const place of places) {
    const said = look(place.tiles);
    const last = groups.at(-1);
    if (last && last.said === said) last.alike.push(place);
    else groups.push({ said, alike: [place] });
  }
  const known = groups.filter(({ said }) => said !== undefined);
  const [only] = groups;
  if (known.length === 0) return `${capital(name)} ${notRecorded}.`;
  if (only && groups.length === 1) return `${capital(lead + only.said)} on all.`;
  const told = known.map(({ said, alike }) => `${said} ${atPlaces(aspect, alike)}`);
  const lacking = groups.flatMap(({ said, alike }) => (said === undefined ? alike : []));
  const rest = lacking.length > 0 ? `; ${name} ${notRecorded} ${atPlaces(aspect, lacking)}` : "";
  return `${capital(lead + told.join(", "))}${rest}.`;
}

function atPlaces(aspect: StripAspect, places: readonly StripPlace[]): string {
  return leads[aspect] + listed(places.map((place) => placeWords(aspect, place)));
}

function colourSentence({ places }: Strip, trust: ColourTrust | null): string {
  const steps = places.slice(1).map((place, i) => apartInColour(places[i] ?? place, place));
  const known = steps.filter((step) => step !== null);
  if (known.length === 0) return "";
  const figures = steps.map((step) => (step === null ? "not measured" : roundDifference(step)));
  const apart =
    steps.length === 1
      ? `Colours ${figures[0]} apart`
      : `Colours, each from the one before: ${listed(figures.map(String))} apart`;
  if (trust === null) return `${apart}; how far tiles made alike differ here is not known yet.`;
  return `${apart}; tiles made alike differ by up to ${roundDifference(trust.difference)} here.`;
}

/** From so many tiles of each on they are more than a hint. Common practice, no source. */
const enough = 3;

function strengthSentence(places: readonly StripPlace[]): string {
  const counts = places.map(({ tiles }) => tiles.length);
  const [least, most] = [Math.min(...counts), Math.max(...counts)];
  if (most === 1) return "One tile of each: it may be chance.";
  const tiles = least === most ? count(least, "tile") : `${least} to ${count(most, "tile")}`;
  return least < enough
    ? `${tiles} of each: a hint, no rule.`
    : `${tiles} of each, of this studio.`;
}

/**
 * The square of a set: glazes laid over each other one by one while all the rest is the same, the
 * top ones across and those underneath down. It is read from what was done to its tiles.
 */
import type { Facet } from "../likeness/make-up.ts";
import type { CoatStep } from "../records/archive.ts";
import { compareIds, idKey } from "../terms/ids.ts";
import { addTo } from "../terms/index-by.ts";
import { comparedSteps } from "./apart.ts";
import type { CatalogueTile } from "./tiles.ts";

export interface Square {
  /** Ids of the glazes across and down, in the order in which their tiles are numbered. */
  readonly tops: readonly string[];
  readonly unders: readonly string[];
  /** Down by across: the tiles of each square; a glaze over itself is a tile with it alone. */
  readonly rows: readonly (readonly (readonly CatalogueTile[])[])[];
}

/** Two layers, or one of a glaze alone, and what else was done, as texts that are the same where it is. */
interface Laid {
  readonly tile: CatalogueTile;
  readonly under: string;
  readonly top: string;
  /** How each layer was put on, whatever its glaze. */
  readonly how: readonly string[];
  readonly rest: string;
}

/** From so many pairs of glazes on they were laid over each other on purpose, and not by chance. */
const fewestPairs = 4;

/** So much of the square, without the glazes over themselves, must have been tried. */
const leastTried = 1 / 3;

/**
 * Finds the square of a set; null where its tiles are none. Of several, as when it was fired twice,
 * the one with most tiles.
 *
 * @param tiles those of the set, in the order of their codes
 */
export function squareOf(tiles: readonly CatalogueTile[]): Square | null {
  const laid = tiles.flatMap((tile) => laidOn(tile) ?? []);
  const groups = new Map<string, Laid[]>();
  for (const one of laid) if (isPair(one)) addTo(groups, keyOf(one), one);
  const [pairs] = [...groups.values()].toSorted((a, b) => b.length - a.length);
  const [first] = pairs ?? [];
  if (!pairs || !first) return null;
  const alone = laid.filter((one) => !isPair(one) && isAloneOf(first, one));
  return layOut(pairs, alone);
}

function isPair({ how }: Laid): boolean {
  return how.length === 2;
}

function keyOf({ how, rest }: Laid): string {
  return JSON.stringify([how, rest]);
}

/** A tile of one layer, put on as one of the two is. */
function isAloneOf({ how, rest }: Laid, alone: Laid): boolean {
  return alone.rest === rest && how.includes(alone.how[0] ?? "");
}

function layOut(pairs: readonly Laid[], alone: readonly Laid[]): Square | null {
  const tops = inOrder(pairs.map(({ top }) => top));
  const unders = inOrder(pairs.map(({ under }) => under));
  const tried = new Set(pairs.map(({ top, under }) => JSON.stringify([top, under])));
  const places = unders.length * tops.length - unders.filter((id) => tops.includes(id)).length;
  const isSquare = tops.length > 1 && unders.length > 1 && tried.size >= fewestPairs;
  if (!isSquare || tried.size < leastTried * places) return null;
  return fill(pairs, alone, axesOf(tops, unders, alone));
}

/** Where most glazes lay both ways, both axes have all of them, so that what nobody tried is seen. */
function axesOf(tops: readonly string[], unders: readonly string[], alone: readonly Laid[]) {
  const both = unders.filter((id) => tops.includes(id)).length;
  if (both < 2) return { tops, unders };
  const used = new Set([...unders, ...tops]);
  const order = inOrder([...alone.map(({ top }) => top).filter((id) => used.has(id)), ...used]);
  return { tops: order, unders: order };
}

function inOrder(ids: readonly string[]): readonly string[] {
  return [...new Set(ids)];
}

function fill(
  pairs: readonly Laid[],
  alone: readonly Laid[],
  { tops, unders }: Pick<Square, "tops" | "unders">,
): Square {
  const found = new Map<string, CatalogueTile[]>();
  for (const { tile, under, top } of [...pairs, ...alone])
    addTo(found, JSON.stringify([under, top]), tile);
  const at = (under: string, top: string) =>
    (found.get(JSON.stringify([under, top])) ?? []).toSorted((a, b) => compareIds(a.id, b.id));
  return { tops, unders, rows: unders.map((under) => tops.map((top) => at(under, top))) };
}

/** Null where there are more layers, a resist, a tool, or a layer of several glazes. */
function laidOn(tile: CatalogueTile): Laid | null {
  const steps = comparedSteps(tile);
  const coats = steps.flatMap((step, place) => (step.step === "coat" ? [{ step, place }] : []));
  const isPlain = steps.every(({ step }) => step === "coat" || step === "fired");
  const glazes = coats.map(({ step }) => onlyGlaze(step));
  const [under, top = under] = glazes;
  if (!isPlain || coats.length > 2 || !under || !top) return null;
  if (coats.length === 2 && (tile.pairs.length !== 1 || glazes.includes(undefined))) return null;
  const { facets } = tile.makeUp;
  const layers = new Set(coats.map(({ place }) => place));
  const rest = facets.filter(({ step }) => step === null || !layers.has(step));
  return {
    tile,
    under: idKey(under),
    top: idKey(top),
    how: coats.map(({ place }) =>
      textOf(facets.filter(({ step, aspect }) => step === place && aspect !== "what")),
    ),
    rest: textOf(rest),
  };
}

function onlyGlaze({ glazes: [only, ...others], touchUp }: CoatStep): string | undefined {
  return others.length > 0 || touchUp ? undefined : only;
}

/** What nobody wrote down is the same in one load, as elsewhere. */
function textOf(facets: readonly Facet[]): string {
  return JSON.stringify(facets.map(({ aspect, value, sharedBy }) => [aspect, value, sharedBy]));
}

/**
 * Strips of a glaze: its tiles that differ in one thing alone, by coats, by cone, by cooling, by clay,
 * in the order of that thing. Nothing stands in a strip that differs in something else as well.
 */
import { differenceCiede2000 } from "../colour/difference.ts";
import type { Aspect } from "../likeness/make-up.ts";
import { type SeriesRow, seriesAmong } from "../likeness/series.ts";
import { type Cone, compareCones } from "../terms/cones.ts";
import { compareIds, idKey } from "../terms/ids.ts";
import { indexBy } from "../terms/index-by.ts";
import { rememberFor } from "../terms/remember.ts";
import { type NotHeldEqual, notHeldEqual, stepAt } from "./apart.ts";
import type { CatalogueTile } from "./tiles.ts";
import type { Catalogue } from "./types.ts";

/** What a glaze's tiles are laid out by. */
const stripAspects = ["coats", "cone", "cooling", "clay"] as const;
export type StripAspect = (typeof stripAspects)[number];

export interface Strip extends NotHeldEqual {
  readonly aspect: StripAspect;
  /** The layer or the firing that differs; null where it is the clay. */
  readonly step: number | null;
  /** From few to many, from cool to hot; what has no order by its letters. Two at least. */
  readonly places: readonly StripPlace[];
}

/** The tiles of one value: more than one where it was made again. */
export interface StripPlace {
  /** As facets have it. */
  readonly value: string;
  readonly tiles: readonly [CatalogueTile, ...CatalogueTile[]];
}

/**
 * Makes the function that finds the strips of a glaze by its id, in the order of `stripAspects`;
 * of each those of the glaze alone first, then the longest. Coats are those of the glaze itself.
 */
export const stripFinder = rememberFor(
  ({ tiles }: Catalogue): ((glaze: string) => readonly Strip[]) => {
    const recorded = tiles.filter(({ results }) => results.length > 0);
    const series = seriesAmong(recorded, ({ makeUp }) => makeUp, stripAspects);
    const strips = series.flatMap(({ aspect, rows }) =>
      rows.map((row) => layOut(aspect as StripAspect, row)),
    );
    const byGlaze = indexBy(strips.toSorted(byWorth), glazesOf);
    return (glaze) => byGlaze.get(idKey(glaze)) ?? [];
  },
);

/** All glazes on tiles that differ in the kiln or the clay; by coats the one whose coats they are. */
function glazesOf({ aspect, step, places }: Strip): readonly string[] {
  const [tile] = places.flatMap(({ tiles }) => tiles);
  if (!tile) return [];
  if (aspect !== "coats") return Object.keys(tile.glazes).map(idKey);
  const layer = stepAt(tile, step);
  return layer?.step === "coat" ? layer.glazes.map(idKey) : [];
}

function byWorth(a: Strip, b: Strip): number {
  const orderOf = ({ aspect }: Strip) => stripAspects.indexOf(aspect);
  const hasOthers = ({ places }: Strip) =>
    Number(Object.keys(places[0]?.tiles[0].glazes ?? {}).length > 1);
  return (
    orderOf(a) - orderOf(b) ||
    hasOthers(a) - hasOthers(b) ||
    b.places.length - a.places.length ||
    countTiles(b) - countTiles(a)
  );
}

function countTiles({ places }: Strip): number {
  return places.reduce((sum, { tiles }) => sum + tiles.length, 0);
}

function layOut(aspect: StripAspect, { step, byValue }: SeriesRow<CatalogueTile>): Strip {
  const places = [...byValue]
    .map(([value, tiles]) => ({ value, tiles }))
    .toSorted((a, b) => compareValues(aspect, a.value, b.value));
  const tiles = places.flatMap((place) => place.tiles);
  return { aspect, step, places, ...notHeldEqual(tiles) };
}

/** From few to many, from cool to hot; what has no order by its letters. */
export function compareValues(aspect: Aspect, a: string, b: string): number {
  return aspect === "cone" ? compareCones(a as Cone, b as Cone) : compareIds(a, b);
}

/**
 * How far the colours of two places are apart (CIEDE2000), the first measured tile of each; null
 * where one has none.
 */
export function apartInColour(a: StripPlace, b: StripPlace): number | null {
  const [one, other] = [a, b].map(({ tiles }) => tiles.find(({ colour }) => colour)?.colour?.lab);
  return one && other ? differenceCiede2000(one, other) : null;
}

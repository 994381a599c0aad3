/**
 * One glaze over another, the reverse and each alone, side by side: a row for every circumstance and
 * every number of coats, so that what stands in one row differs in nothing that was counted but what
 * lies on what.
 */
import { compareIds } from "../terms/ids.ts";
import { indexBy } from "../terms/index-by.ts";
import { rememberFor } from "../terms/remember.ts";
import { byHeat, type Circumstance, circumstanceKey, circumstanceOf } from "./circumstance.ts";
import { groupBy } from "./group-by.ts";
import { countLapped } from "./mixing/overlaps.ts";
import type { CataloguePair } from "./pairs.ts";
import type { CatalogueTile } from "./tiles.ts";
import { tilesByCode } from "./tiles-by-code.ts";
import type { Catalogue } from "./types.ts";

/** All tiles of two glazes in one circumstance. */
export interface PairCircumstance {
  readonly circumstance: Circumstance;
  /** From few coats to many; what nobody counted comes last. */
  readonly rows: readonly PairRow[];
}

/** Tiles with the same number of coats of each glaze. */
export interface PairRow {
  /** Of the glaze that the page has on top, and of the one that it has beneath. */
  readonly coats: PairCoats | null;
  readonly asNamed: readonly CatalogueTile[];
  /** The same two the other way round. */
  readonly reversed: readonly CatalogueTile[];
  readonly overAlone: AloneBeside;
  readonly underAlone: AloneBeside;
}

/** How many coats of each lie where they meet. */
export interface PairCoats {
  readonly over: number;
  readonly under: number;
}

/** What one of the two glazes does by itself. */
export interface AloneBeside {
  /** In the same circumstance, those with as many coats first. */
  readonly here: readonly CatalogueTile[];
  /** At the same cone, but otherwise fired or glazed on something else. */
  readonly elsewhere: readonly CatalogueTile[];
}

/** Sets out a pair: what both orders have in common first, then from cool to hot. */
export function pairTable(
  catalogue: Pick<Catalogue, "glazes" | "tileById">,
  pair: Pick<CataloguePair, "over" | "under" | "tiles">,
  reversed: readonly string[],
): readonly PairCircumstance[] {
  const placed = [
    ...placeAll(catalogue, pair.tiles, pair, "asNamed"),
    ...placeAll(catalogue, reversed, pair, "reversed"),
  ];
  const findAlone = aloneFinder(catalogue);
  return groupBy(placed, ({ tile }) => circumstanceKey(tile))
    .map((group) => ({ group, circumstance: circumstanceOf(group[0].tile) }))
    .sort((a, b) => inOrder(a, b))
    .map(({ group, circumstance }) => ({
      circumstance,
      rows: rowsOf(group).map((row) => ({
        ...row,
        overAlone: findAlone(pair.over.id, group[0].tile, row.coats?.over ?? null),
        underAlone: findAlone(pair.under.id, group[0].tile, row.coats?.under ?? null),
      })),
    }));
}

interface Placed {
  readonly tile: CatalogueTile;
  readonly order: "asNamed" | "reversed";
  readonly coats: PairCoats | null;
}

function placeAll(
  catalogue: Pick<Catalogue, "tileById">,
  codes: readonly string[],
  { over, under }: Pick<CataloguePair, "over" | "under">,
  order: Placed["order"],
): readonly Placed[] {
  return tilesByCode(catalogue, codes).map((tile) => ({
    tile,
    order,
    coats: coatsOf(tile, over.id, under.id, order),
  }));
}

function coatsOf(
  tile: CatalogueTile,
  over: string,
  under: string,
  order: Placed["order"],
): PairCoats | null {
  if (order === "asNamed") return countLapped(tile, over, under) ?? null;
  const lapped = countLapped(tile, under, over);
  return lapped ? { over: lapped.under, under: lapped.over } : null;
}

interface Group {
  readonly group: readonly Placed[];
  readonly circumstance: Circumstance;
}

function inOrder(a: Group, b: Group): number {
  return (
    rankOf(a) - rankOf(b) ||
    byHeat(a.circumstance.cone, b.circumstance.cone) ||
    compareIds(circumstanceText(a), circumstanceText(b))
  );
}

function circumstanceText({ group: [first] }: Group): string {
  return first ? circumstanceKey(first.tile) : "";
}

/** What was tried both ways teaches most; what was tried the other way round alone, less; what waits, nothing. */
function rankOf({ group, circumstance }: Group): number {
  if (circumstance.firings === 0) return 3;
  const has = (order: Placed["order"]) => group.some((placed) => placed.order === order);
  if (!has("asNamed")) return 2;
  return has("reversed") ? 0 : 1;
}

function rowsOf(group: readonly Placed[]): readonly Omit<PairRow, "overAlone" | "underAlone">[] {
  return groupBy(group, ({ coats }) => JSON.stringify(coats))
    .map((row) => ({
      coats: row[0].coats,
      asNamed: tilesIn(row, "asNamed"),
      reversed: tilesIn(row, "reversed"),
    }))
    .sort(
      (a, b) =>
        (a.coats?.over ?? Number.POSITIVE_INFINITY) - (b.coats?.over ?? Number.POSITIVE_INFINITY) ||
        (a.coats?.under ?? 0) - (b.coats?.under ?? 0),
    );
}

function tilesIn(row: readonly Placed[], order: Placed["order"]): readonly CatalogueTile[] {
  return row.filter((placed) => placed.order === order).map(({ tile }) => tile);
}

type FindAlone = (glaze: string, like: CatalogueTile, coats: number | null) => AloneBeside;

/** So many that were fired or made otherwise are handed on: nobody reads more beside a pair. */
const mostElsewhere = 12;

/** Indexed once for all pairs of a catalogue. */
const aloneFinder = rememberFor((catalogue: Pick<Catalogue, "glazes" | "tileById">): FindAlone => {
  const byGlaze = new Map(
    catalogue.glazes.map(({ id, alone }) => {
      const tiles = tilesByCode(catalogue, alone);
      const byCone = indexBy(tiles, ({ cone }) => (cone === null ? [] : [cone]));
      return [id, { like: indexBy(tiles, (tile) => [circumstanceKey(tile)]), byCone }] as const;
    }),
  );
  return (glaze, like, coats) => {
    const found = byGlaze.get(glaze);
    const key = circumstanceKey(like);
    const here = found?.like.get(key) ?? [];
    const atCone = like.cone === null ? [] : (found?.byCone.get(like.cone) ?? []);
    return {
      here: here.toSorted((a, b) => awayFrom(coats, a) - awayFrom(coats, b)),
      elsewhere: firstOf(atCone, (tile) => circumstanceKey(tile) !== key),
    };
  };
});

function firstOf(
  tiles: readonly CatalogueTile[],
  holds: (tile: CatalogueTile) => boolean,
): readonly CatalogueTile[] {
  const found: CatalogueTile[] = [];
  for (const tile of tiles) {
    if (holds(tile)) found.push(tile);
    if (found.length === mostElsewhere) break;
  }
  return found;
}

/** How many coats a tile with one glaze has more or fewer; what nobody counted comes last. */
function awayFrom(coats: number | null, { coatCounts }: CatalogueTile): number {
  const [first, ...more] = new Set(coatCounts.map((count) => count.coats));
  if (coats === null) return 0;
  return first === undefined || first === null || more.length > 0
    ? Number.MAX_SAFE_INTEGER
    : Math.abs(first - coats);
}

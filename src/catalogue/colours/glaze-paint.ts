/**
 * Which measurement of a glaze alone speaks for it: on a page where it has one colour, and in the
 * section through a tile, where it should be the colour it has on such a clay in such a fire.
 */

import { differenceCiede2000 } from "../../colour/difference.ts";
import { type Cone, conesHotter } from "../../terms/cones.ts";
import { idKey } from "../../terms/ids.ts";
import type { CatalogueClay } from "../clays.ts";
import type { CatalogueTile } from "../tiles.ts";
import { clayLab } from "./clay-colour.ts";
import type { MeasuredAlone } from "./measured-alone.ts";

/** Where a glaze's colour is wanted: the tile that it is on. */
export type PaintedTile = Pick<CatalogueTile, "atmosphere" | "clay" | "cone">;

/**
 * The measurement nearest to what a glaze looks like on a tile: fired in reduction where the tile
 * was, and not where it was not; on the same clay, else on the clay nearest to it in colour; then
 * at the nearest cone; sound and fired once rather than faulty or fired again. Of several the one
 * of middling lightness. Undefined where the glaze was never measured all over a tile: what shows
 * bare clay has the clay's colour in it.
 *
 * That reduction outweighs the clay is common practice, no source: it turns copper from green to
 * red and iron from brown to grey-green, which no clay does.
 */
export function findPaint(
  measured: readonly MeasuredAlone[],
  tile: PaintedTile,
  distance: ClayDistance,
): MeasuredAlone | undefined {
  const whole = measured.filter(({ lie }) => lie !== "partial");
  const byFire = nearest(whole, (one) => (isReduced(one) === isReduced(tile) ? 0 : 1));
  const byClay = nearest(byFire, ({ clay }) => distance(clay?.id ?? null, tile.clay?.id ?? null));
  const byCone = nearest(byClay, ({ cone }) => conesApart(cone, tile.cone));
  return findMiddling(preferSound(byCone));
}

/** Finds the paint of a glaze on a tile, by the glaze's id. */
export type FindPaint = (glaze: string, tile: PaintedTile) => MeasuredAlone | undefined;

/** What of a catalogue paints its tiles: its clays, and what each glaze measured alone. */
export interface Paints {
  readonly clays: readonly CatalogueClay[];
  readonly glazeById: ReadonlyMap<
    string,
    { readonly onClays: readonly { readonly measured: readonly MeasuredAlone[] }[] }
  >;
}

/** Paints for all tiles of a catalogue; like tiles are asked about once. */
export function paintFinder(catalogue: Paints): FindPaint {
  const distance = clayDistances(catalogue.clays);
  const found = new Map<string, MeasuredAlone | undefined>();
  return (glaze, tile) => {
    const key = JSON.stringify([idKey(glaze), tile.clay?.id, tile.cone, isReduced(tile)]);
    if (!found.has(key)) {
      const onClays = catalogue.glazeById.get(idKey(glaze))?.onClays ?? [];
      found.set(
        key,
        findPaint(
          onClays.flatMap(({ measured }) => measured),
          tile,
          distance,
        ),
      );
    }
    return found.get(key);
  };
}

/** The measurement that speaks for a glaze on every clay. */
export function findShown(measured: readonly MeasuredAlone[]): MeasuredAlone | undefined {
  return findMiddling(preferSound(measured.filter(({ lie }) => lie !== "partial")));
}

/** Of several tiles the one of middling lightness: a mean would be a colour that no tile has. */
export function findMiddling(measured: readonly MeasuredAlone[]): MeasuredAlone | undefined {
  const byLightness = [...measured].sort((a, b) => a.colour.lab[0] - b.colour.lab[0]);
  return byLightness[Math.floor(byLightness.length / 2)];
}

/** Those without a fault that were fired once, if there are any. */
export function preferSound(measured: readonly MeasuredAlone[]): readonly MeasuredAlone[] {
  return nearest(measured, ({ faults, firedAgain }) => (faults.length > 0 || firedAgain ? 1 : 0));
}

/** How far one clay lies from another by their ids; endless where that cannot be told. */
export type ClayDistance = (one: string | null, other: string | null) => number;

/** Distances between clays by what their studio calls their colours; a clay is nearest to itself. */
export function clayDistances(
  clays: readonly Pick<CatalogueClay, "colour" | "id" | "name">[],
): ClayDistance {
  const labs = new Map(clays.map(({ id, colour, name }) => [idKey(id), clayLab(colour ?? name)]));
  return (one, other) => {
    if (one === null || other === null) return Number.POSITIVE_INFINITY;
    if (idKey(one) === idKey(other)) return -1;
    const [first, second] = [labs.get(idKey(one)), labs.get(idKey(other))];
    return first && second ? differenceCiede2000(first, second) : Number.POSITIVE_INFINITY;
  };
}

function isReduced({ atmosphere }: Pick<PaintedTile, "atmosphere">): boolean {
  return atmosphere === "reduction";
}

function conesApart(one: Cone | null, other: Cone | null): number {
  return one && other ? Math.abs(conesHotter(one, other)) : Number.POSITIVE_INFINITY;
}

/** All that are as near as the nearest. */
function nearest(
  measured: readonly MeasuredAlone[],
  distance: (one: MeasuredAlone) => number,
): readonly MeasuredAlone[] {
  const distances = measured.map(distance);
  const least = Math.min(...distances);
  return measured.filter((_, i) => distances[i] === least);
}

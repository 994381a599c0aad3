/** Orders tiles by how near their measured colours are to a colour that somebody asked for. */
import { type Lab, labToLinear, linearToLab } from "../../colour/cielab.ts";
import { differenceCiede2000, roundDifference } from "../../colour/difference.ts";
import { nameColour } from "../../colour/name.ts";
import { linearToOklab } from "../../colour/oklab.ts";
import { hexToLinear, linearToHex } from "../../colour/srgb.ts";
import type { Facets, HundredthsColumn } from "../../publish/facets-file.ts";
import { findFirst, sortBy } from "./sort-by.ts";
import type { Captions } from "./tiles.ts";

/** The colour asked for: one that was picked, as `#rrggbb`, or that of the tile in this place. */
export type Near = { readonly hex: string } | { readonly tile: number };

/** A colour asked for, and what it is called. */
export interface Asked {
  readonly near: Near;
  readonly lab: Lab;
  /** As a screen shows it. */
  readonly hex: string;
  /** Its plain name. */
  readonly name: string;
}

/** The measured colours of the tiles, in CIELAB. */
export interface Colours {
  /** For each tile 1 where its colour was measured. */
  readonly measured: Uint8Array;
  /** For each tile the value on each axis; not a number where none was measured. */
  readonly axes: readonly [L: Float64Array, a: Float64Array, b: Float64Array];
}

export function readColours({ lab }: Pick<Facets, "lab">): Colours {
  const read = (axis: HundredthsColumn) =>
    Float64Array.from(axis, (value) => (value === null ? Number.NaN : value / 100));
  return {
    measured: Uint8Array.from(lab[0], (lightness) => (lightness === null ? 0 : 1)),
    axes: [read(lab[0]), read(lab[1]), read(lab[2])],
  };
}

/** What a colour is that is asked for. A tile that is asked for must have been measured. */
export function describeAsked(near: Near, colours: Colours): Asked {
  const lab = "tile" in near ? labOf(colours, near.tile) : linearToLab(hexToLinear(near.hex));
  const light = labToLinear(lab);
  const hex = "hex" in near ? near.hex : linearToHex(light);
  return { near, lab, hex, name: nameColour(linearToOklab(light)) };
}

/** Tiles in the order of their colours. */
export interface InOrder {
  /** The tile that was asked for, if any, then the nearest first, equals as they stood. */
  readonly tiles: Uint32Array;
  /** How far each of them is from the colour asked for, in CIEDE2000. */
  readonly differences: Float64Array;
}

/**
 * Puts tiles in the order of their colours.
 *
 * @param tiles measured ones
 */
export function putNearestFirst(tiles: Uint32Array, asked: Asked, colours: Colours): InOrder {
  const differences = Float64Array.from(tiles).map((tile) => differenceTo(asked, tile, colours));
  const itself = "tile" in asked.near ? tiles.indexOf(asked.near.tile) : -1;
  if (itself >= 0) differences[itself] = -1;
  const inOrder = sortBy(tiles, differences);
  if (itself >= 0) inOrder.keys[0] = 0;
  return { tiles: inOrder.values, differences: inOrder.keys };
}

/** What the wall says of tiles that stand in the order of a colour: nearness has its ends. */
export interface NearCaptions extends Captions {
  /** How many tiles, from the first, are as good as the same. */
  readonly same: number;
}

/**
 * Up to so far apart, in CIEDE2000, two colours have mostly one name: of the pairs of colours in R.
 * Munroe's survey that are 16 to 18 apart more than half share a family, of those beyond fewer.
 */
export const reach = 18;

/**
 * @param meaningless the difference below which none means anything; null where nobody knows
 */
export function captionTiles(
  { tiles, differences }: InOrder,
  { near }: Asked,
  meaningless: number | null,
): NearCaptions {
  const itself = "tile" in near && tiles[0] === near.tile;
  const below = meaningless === null ? 0 : findFirst(differences, meaningless);
  // Where none but the tile that was asked for is as good as the same, none is.
  const same = itself && below === 1 ? 0 : below;
  return {
    at: (place) => (itself && place === 0 ? theTile : apart(differences[place] ?? 0)),
    same,
    lines: drawLines(same, findFirst(differences, reach), tiles.length),
  };
}

const theTile = "the tile itself";

const apart = (difference: number) => `${roundDifference(difference)} apart`;

/** `12 apart`: how far a tile's colour is from the one asked for. */
export function tellApart(asked: Asked, tile: number, colours: Colours): string {
  const isItself = "tile" in asked.near && asked.near.tile === tile;
  return isItself ? theTile : apart(differenceTo(asked, tile, colours));
}

function differenceTo({ lab }: Asked, tile: number, colours: Colours): number {
  return differenceCiede2000(lab, labOf(colours, tile));
}

/** @param within how many are within reach */
function drawLines(same: number, within: number, all: number): ReadonlyMap<number, string> {
  const lines = new Map<number, string>();
  if (same > 0) lines.set(0, "As good as the same here").set(same, "Further apart");
  if (within >= same) lines.set(within, "Farther off: most people would give it another name");
  lines.delete(all);
  return lines;
}

function labOf({ axes }: Colours, tile: number): Lab {
  return [axes[0][tile] ?? Number.NaN, axes[1][tile] ?? Number.NaN, axes[2][tile] ?? Number.NaN];
}

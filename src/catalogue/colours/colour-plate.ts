/** All measured tiles by hue and lightness, as on a plate of colours. */

import { type Lab, labToLinear } from "../../colour/cielab.ts";
import type { MeasuredColour } from "../../colour/measure.ts";
import type { ColourName } from "../../colour/name.ts";
import { linearToHex } from "../../colour/srgb.ts";
import { compareIds } from "../../terms/ids.ts";
import { groupBy } from "../group-by.ts";
import { pickEvenly } from "../pick-evenly.ts";
import type { CatalogueTile } from "../tiles.ts";

/** All measured tiles by hue and lightness. */
export interface ColourPlate {
  /** The hues in their order, then what has none; only those that some tile has. */
  readonly rows: readonly PlateRow[];
  /** Names that no tile has. */
  readonly absent: readonly ColourName[];
  readonly measured: number;
  readonly unmeasured: number;
}

export interface PlateRow {
  /** One hue, or white, grey and black together, each with its number of tiles. */
  readonly names: readonly { readonly name: ColourName; readonly tiles: number }[];
  /** One for each band of lightness, the lightest first. */
  readonly cells: readonly PlateCell[];
}

export interface PlateCell {
  /** How many tiles stand in it. */
  readonly tiles: number;
  /** The codes of those that are shown, by hue: all, or as many as there is room for. */
  readonly shown: readonly string[];
  /** The mean of all its colours, as `#rrggbb`; null where it is empty. */
  readonly centre: string | null;
}

/** The hues in their order round the circle, brown beside the orange it is a dark of. */
const hues: readonly ColourName[] = [
  "pink",
  "red",
  "orange",
  "brown",
  "yellow",
  "green",
  "blue",
  "purple",
];

/** What has no hue stands in one row: how light it is tells them apart. */
const neutrals: readonly ColourName[] = ["white", "grey", "black"];

const rows: readonly (readonly ColourName[])[] = [...hues.map((name) => [name]), neutrals];

/** Bands of lightness, by their lower ends in L* of CIELAB, the lightest first. */
export const lightnessBands: readonly number[] = [80, 60, 40, 20, 0];

/** What a cell has room for: with more, tiles from all through its hues stand for the others. */
export const tilesInACell = 15;

interface PlacedTile {
  readonly id: string;
  readonly colour: MeasuredColour;
}

/** Lays the plate: every measured tile is counted in one cell of one row. */
export function layPlate(tiles: readonly CatalogueTile[]): ColourPlate {
  const placed = tiles.flatMap(({ id, colour }) => (colour ? [{ id, colour }] : []));
  const alike = groupBy(placed, ({ colour }) => colour.name);
  const counted = new Map(alike.map((group) => [group[0].colour.name, group]));
  return {
    rows: rows.map((names) => layRow(names, counted)).filter(({ names }) => names.length > 0),
    absent: rows.flat().filter((name) => !counted.has(name)),
    measured: placed.length,
    unmeasured: tiles.length - placed.length,
  };
}

function layRow(
  row: readonly ColourName[],
  counted: ReadonlyMap<ColourName, readonly PlacedTile[]>,
): PlateRow {
  const own = row.flatMap((name) => counted.get(name) ?? []);
  const compare = row === neutrals ? byLightness : byHue;
  return {
    names: row.flatMap((name) => {
      const tiles = counted.get(name)?.length ?? 0;
      return tiles > 0 ? [{ name, tiles }] : [];
    }),
    cells: lightnessBands.map((_, band) =>
      layCell(own.filter(({ colour }) => bandOf(colour) === band).sort(compare)),
    ),
  };
}

/** The place of a colour among the bands. */
export function bandOf({ lab }: Pick<MeasuredColour, "lab">): number {
  const band = lightnessBands.findIndex((low) => lab[0] >= low);
  return band < 0 ? lightnessBands.length - 1 : band;
}

function layCell(tiles: readonly PlacedTile[]): PlateCell {
  return {
    tiles: tiles.length,
    shown: pickEvenly(tiles, tilesInACell).map(({ id }) => id),
    centre: meanColour(tiles.map(({ colour }) => colour.lab)),
  };
}

function meanColour(labs: readonly Lab[]): string | null {
  if (labs.length === 0) return null;
  const mean = ([0, 1, 2] as const).map(
    (axis) => labs.reduce((sum, lab) => sum + lab[axis], 0) / labs.length,
  );
  return linearToHex(labToLinear(mean as unknown as Lab));
}

function byLightness(a: PlacedTile, b: PlacedTile): number {
  return b.colour.lab[0] - a.colour.lab[0] || compareIds(a.id, b.id);
}

function byHue(a: PlacedTile, b: PlacedTile): number {
  return hueOf(a.colour) - hueOf(b.colour) || byLightness(a, b);
}

/** The hue angle in CIELAB, counted from between purple and pink, so that no row is cut by it. */
function hueOf({ lab: [, a, b] }: MeasuredColour): number {
  return ((Math.atan2(b, a) * 180) / Math.PI + 400) % 360;
}

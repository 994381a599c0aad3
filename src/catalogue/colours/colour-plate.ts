/** All measured tiles by hue and lightness, as on a plate of colours. */

import { type Lab, labToLinear } from "../../colour/cielab.ts";
import { type ColourName, families } from "../../colour/name.ts";
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
  /** Those that are shown, by hue: all, or as many as there is room for. */
  readonly shown: readonly PlateTile[];
  /** The mean of all its colours, as `#rrggbb`; null where it is empty. */
  readonly centre: string | null;
}

/** A tile on the plate, with that colour of it that stands there. */
export interface PlateTile {
  readonly id: string;
  readonly name: ColourName;
  readonly hex: string;
}

/** What has no hue stands in one row: how light it is tells them apart. */
const neutrals: readonly ColourName[] = ["white", "grey", "black"];

/** The hues in their order round the circle, each with what is paler or darker of it beside it. */
const hues = families.filter((name) => !neutrals.includes(name));

const rows: readonly (readonly ColourName[])[] = [...hues.map((name) => [name]), neutrals];

/** Bands of lightness, by their lower ends in L* of CIELAB, the lightest first. */
export const lightnessBands: readonly number[] = [80, 60, 40, 20, 0];

/** What a cell has room for: with more, tiles from all through its hues stand for the others. */
export const tilesInACell = 15;

/** What the whole plate has room for, however many of its cells are full. */
export const tilesOnThePlate = 220;

/** A large colour of a tile, under one of the names that it is found by. */
interface PlacedColour extends PlateTile {
  readonly lab: Lab;
}

/**
 * Lays the plate: every measured tile stands once under each name that it is found by, where the
 * largest of its colours of that name lies.
 */
export function layPlate(tiles: readonly PlatedTile[]): ColourPlate {
  const placed = tiles.flatMap(placeColours);
  const counted = new Map(
    groupBy(placed, ({ name }) => name).map((group) => [group[0].name, group]),
  );
  const measured = tiles.filter(({ largeColours }) => largeColours.length > 0).length;
  const laid = rows.map((names) => layRow(names, counted)).filter(({ names }) => names.length > 0);
  const most = mostInACell(laid.flatMap(({ cells }) => cells));
  return {
    rows: laid.map((row) => ({ ...row, cells: row.cells.map((cell) => pickFrom(cell, most)) })),
    absent: rows.flat().filter((name) => !counted.has(name)),
    measured,
    unmeasured: tiles.length - measured,
  };
}

type PlatedTile = Pick<CatalogueTile, "id" | "largeColours">;

function placeColours({ id, largeColours }: PlatedTile): readonly PlacedColour[] {
  const byName = new Map<ColourName, PlacedColour>();
  for (const { hex, lab, families: names } of largeColours)
    for (const name of names) if (!byName.has(name)) byName.set(name, { id, name, hex, lab });
  return [...byName.values()];
}

/** As many as the plate has room for where all its cells show as many. */
function mostInACell(cells: readonly PlateCell[]): number {
  const isRoomFor = (most: number) =>
    cells.reduce((sum, { tiles }) => sum + Math.min(tiles, most), 0) <= tilesOnThePlate;
  const most = Array.from({ length: tilesInACell }, (_, i) => tilesInACell - i).find(isRoomFor);
  return most ?? 1;
}

function pickFrom(cell: PlateCell, most: number): PlateCell {
  return { ...cell, shown: pickEvenly(cell.shown, most) };
}

function layRow(
  row: readonly ColourName[],
  counted: ReadonlyMap<ColourName, readonly PlacedColour[]>,
): PlateRow {
  // A colour between white and grey has both names, and one place in their row.
  const own = [
    ...new Map(
      row
        .flatMap((name) => counted.get(name) ?? [])
        .map((colour) => [`${colour.id} ${colour.hex}`, colour]),
    ).values(),
  ];
  const compare = row === neutrals ? byLightness : byHue;
  return {
    names: row.flatMap((name) => {
      const tiles = counted.get(name)?.length ?? 0;
      return tiles > 0 ? [{ name, tiles }] : [];
    }),
    cells: lightnessBands.map((_, band) =>
      layCell(own.filter((each) => bandOf(each) === band).sort(compare)),
    ),
  };
}

/** The place of a colour among the bands. */
export function bandOf({ lab }: { readonly lab: Lab }): number {
  const band = lightnessBands.findIndex((low) => lab[0] >= low);
  return band < 0 ? lightnessBands.length - 1 : band;
}

function layCell(colours: readonly PlacedColour[]): PlateCell {
  return {
    tiles: colours.length,
    shown: colours.map(({ id, name, hex }) => ({ id, name, hex })),
    centre: meanColour(colours.map(({ lab }) => lab)),
  };
}

function meanColour(labs: readonly Lab[]): string | null {
  if (labs.length === 0) return null;
  const mean = ([0, 1, 2] as const).map(
    (axis) => labs.reduce((sum, lab) => sum + lab[axis], 0) / labs.length,
  );
  return linearToHex(labToLinear(mean as unknown as Lab));
}

function byLightness(a: PlacedColour, b: PlacedColour): number {
  return b.lab[0] - a.lab[0] || compareIds(a.id, b.id);
}

function byHue(a: PlacedColour, b: PlacedColour): number {
  return hueOf(a.lab) - hueOf(b.lab) || byLightness(a, b);
}

/** The hue angle in CIELAB, counted from between purple and pink, so that no row is cut by it. */
function hueOf([, a, b]: Lab): number {
  return ((Math.atan2(b, a) * 180) / Math.PI + 400) % 360;
}

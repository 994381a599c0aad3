/** `data/tiles.json`: the tiles, as numbers and words. */

import { type Apart, besideEachOther } from "../../catalogue/apart.ts";
import type { CatalogueStep } from "../../catalogue/kilns/tile-firings.ts";
import type { CatalogueTile } from "../../catalogue/tiles.ts";
import type { TileStep } from "../../records/archive.ts";
import { toBeside } from "./beside.ts";
import { toLeachTests } from "./leach-tests.ts";
import { rounded } from "./numbers.ts";
import { emptyLayer, type TileRow } from "./rows.ts";

/** @param apart what is at most one change apart from the tile */
export function toTileRow(tile: CatalogueTile, apart: readonly Apart[]): TileRow {
  const { id, url, glazed, stage, texture, shape, angle, cone, atmosphere, run, again, colour } =
    tile;
  return {
    id,
    url,
    set: tile.set?.id ?? null,
    maker: tile.maker?.name ?? null,
    glazed,
    stage,
    clay: tile.clay?.id ?? null,
    texture,
    shape,
    angle,
    cone,
    atmosphere,
    surface: [...tile.surface],
    effects: [...tile.effects],
    faults: [...tile.faults],
    run,
    again,
    layers: tile.steps.map(toLayerRow),
    colour: colour && toColourRow(colour),
    leachTests: toLeachTests(tile.leachTests),
    oneChange: apart.map((other) => toOneChange(tile, other)),
    cautions: [
      ...tile.cautions.map((note) => note.message),
      ...tile.minding.flatMap(({ glaze, quiet }) =>
        quiet.length > 0 ? [`${glaze.name}: ${quiet.join("; ")}`] : [],
      ),
    ],
  };
}

function toOneChange(tile: CatalogueTile, { tile: other, difference }: Apart) {
  return { tile: other.id, difference, ...toBeside(besideEachOther(tile, other)) };
}

function toColourRow({ hex, lab, spread, palette }: NonNullable<CatalogueTile["colour"]>) {
  const [l, a, b] = lab;
  return {
    hex,
    lab: [rounded(l, 2), rounded(a, 2), rounded(b, 2)] as [number, number, number],
    spread: rounded(spread, 2),
    palette: palette.map((entry) => ({ hex: entry.hex, share: rounded(entry.share, 3) })),
  };
}

type LayerRow = TileRow["layers"][number];

/** A field of a layer that has no row in `rows.ts` is a type error here: nothing goes missing. */
({}) satisfies Record<Exclude<KeyOfAny<TileStep>, keyof LayerRow | "at">, never>;

type KeyOfAny<T> = T extends unknown ? keyof T : never;

function toLayerRow({ at: _, ...step }: CatalogueStep): LayerRow {
  if (step.step === "fired") {
    const { kind, firing, shelf } = step;
    return { ...emptyLayer, step: "fired", kind, firing, shelf };
  }
  const where = [...step.where];
  if (step.step !== "coat") return { ...emptyLayer, ...step, where };
  return { ...emptyLayer, ...step, where, glazes: [...step.glazes], over: [...step.over] };
}

/** Tiles with one glaze alone, on some clays, in some fires. */
import type { Lab } from "../../../src/colour/cielab.ts";
import type { CoatStep, Tile } from "../../../src/records/archive.ts";
import type { Atmosphere } from "../../../src/terms/choices.ts";
import { clay, coat, cone, fired, firing, glaze, result, tile } from "../../checks/support.ts";
import { measuredCatalogue } from "../measured.ts";

export const glazes = [glaze("soot"), glaze("kelp")];

export const clays = [
  clay("buff", { name: "Buff", colour: "warm buff" }),
  clay("cream", { name: "Cream", colour: "cream" }),
  clay("red", { name: "Red", colour: "brick red" }),
  clay("odd", { name: "Odd", colour: "anyone's guess" }),
];

const schedule = [{ to: 1200, rate: 60 }];
const loads = ["06", "4", "6", "8", "10"].flatMap((to) =>
  (["oxidation", "reduction"] as const).map((atmosphere) =>
    firing(`${to}-${atmosphere}`, {
      cone: cone(to),
      atmosphere,
      heatedBy: "electric",
      schedule: schedule as never,
      kiln: "Drum",
      on: "2026-10-01",
    }),
  ),
);
export const firings = [
  firing("bisque", { kind: "bisque", cone: cone("06") }),
  firing("raku", { kind: "raku", cone: cone("06"), on: "2026-10-02" }),
  firing("wood", { cone: cone("10"), heatedBy: "wood", on: "2026-10-03" }),
  firing("nowhere", { on: "2026-10-04" }),
  firing("to come", { cone: cone("6") }),
  firing("6-slow", {
    cone: cone("6"),
    atmosphere: "oxidation",
    heatedBy: "electric",
    schedule: [...schedule, { to: 900, rate: -50 }] as never,
    kiln: "Drum",
    on: "2026-10-05",
  }),
  ...loads,
];

export interface Alone {
  readonly clay?: string | null;
  readonly cone?: string;
  readonly atmosphere?: Atmosphere;
  /** The loads after the last coat, instead of one of that cone and atmosphere. */
  readonly loads?: readonly string[];
  readonly coats?: number | null;
  readonly coat?: Partial<CoatStep>;
  readonly faults?: readonly string[];
  readonly texture?: string;
  readonly glaze?: string;
}

/** A tile of one glaze: two coats of soot, brushed, on buff, at cone 6 in oxidation unless said. */
export function alone(id: string, about: Alone = {}): Tile {
  const { clay: on = "buff", cone: to = "6", atmosphere = "oxidation", coats = 2 } = about;
  const after = about.loads ?? [`${to}-${atmosphere}`];
  const outcome = { ...result(), faults: about.faults };
  return tile(
    id,
    [
      fired("bisque", "bisque"),
      coat(about.glaze ?? "soot", { coats, by: "brush", ...about.coat }),
      ...after.map((load) => fired(load, load === "raku" ? "raku" : "glaze")),
    ],
    {
      ...(on !== null && { clay: on }),
      ...(about.texture !== undefined && { texture: about.texture }),
      result: [outcome] as never,
    },
  );
}

/** A neutral grey of some lightness. */
export const grey = (lightness: number): Lab => [lightness, 0, 0];

/** A tile, and the colour measured on it; null where none was. */
export type Coloured = readonly [Tile, Lab | null];

/** The catalogue of some tiles, each with the colour measured on it. */
export function colouredCatalogue(tiles: readonly Coloured[]) {
  const colours = tiles.flatMap(([{ id }, lab]) => (lab ? [[id, lab] as const] : []));
  return measuredCatalogue(
    { glazes, clays, firings, tiles: tiles.map(([one]) => one) },
    Object.fromEntries(colours),
  );
}

/** What the catalogue holds of soot. */
export function sootOf(...tiles: readonly Coloured[]) {
  const soot = colouredCatalogue(tiles).glazeById.get("soot");
  if (!soot) throw new Error("no soot");
  return soot;
}

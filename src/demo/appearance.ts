import type { Appearance, GlazeAppearance } from "./appearance-kinds.ts";
import { BOUGHT_GLAZES } from "./bought-glazes.ts";
import { MIXED_GLAZES } from "./mixed-glazes.ts";
import type { ClayLook } from "./tile-plan.ts";

/** How the demo studio's glazes look, by id. */
export const GLAZE_APPEARANCE: Readonly<Record<string, GlazeAppearance>> = {
  ...BOUGHT_GLAZES,
  ...MIXED_GLAZES,
};

/** Colours that change where two glazes meet: what the one below or above becomes. */
export interface PairAppearance {
  readonly over: string;
  readonly under: string;
  readonly changes: "over" | "under";
  readonly becomes: Partial<Appearance>;
}

export const PAIR_APPEARANCE: readonly PairAppearance[] = [
  // Zinc takes the pink out of chrome and tin, and turns chrome green brown (common practice, no source).
  {
    over: "stillwater-clear",
    under: "petal",
    changes: "under",
    becomes: { thin: "#d9d0c4", thick: "#d5cdc2" },
  },
  {
    over: "stillwater-clear",
    under: "leaf",
    changes: "under",
    becomes: { thin: "#8f7a4c", thick: "#7a6238" },
  },
  {
    over: "shrimp",
    under: "hoarfrost",
    changes: "over",
    becomes: { thin: "#d6c6aa", thick: "#cbbba6", float: { colour: "#d3bfae", amount: 0.5 } },
  },
  {
    over: "oilskin",
    under: "sky",
    changes: "over",
    becomes: { thick: "#6f6a30", pool: "#4c4a22" },
  },
  {
    over: "mist",
    under: "soot",
    changes: "over",
    becomes: {
      hiding: 0.4,
      thin: "#e5dcc4",
      thick: "#7f9cc0",
      pool: "#6f93bd",
      float: { colour: "#e5dcc4", amount: 0.7 },
    },
  },
  {
    over: "mist",
    under: "tidewrack",
    changes: "over",
    becomes: { thick: "#a9bcc0", float: { colour: "#e5dcc4", amount: 0.65 } },
  },
  { over: "sky", under: "soot", changes: "over", becomes: { hiding: 0.22 } },
  {
    over: "tidewrack",
    under: "chalk",
    changes: "over",
    becomes: {
      thin: "#d5d0b4",
      thick: "#8ea493",
      pool: "#6d8c84",
      float: { colour: "#b9c6b4", amount: 0.4 },
    },
  },
  {
    over: "tidewrack",
    under: "soot",
    changes: "over",
    becomes: {
      hiding: 0.3,
      thin: "#5a4026",
      thick: "#33454a",
      float: { colour: "#4d6264", amount: 0.3 },
    },
  },
  {
    over: "tidewrack",
    under: "moss",
    changes: "over",
    becomes: { thin: "#7a5230", float: { colour: "#7d5f3c", amount: 0.5 } },
  },
  {
    over: "lagoon",
    under: "soot",
    changes: "over",
    becomes: { hiding: 0.2, thick: "#1f8c92", float: { colour: "#14262a", amount: 0.75 } },
  },
  {
    over: "mist",
    under: "moss",
    changes: "over",
    becomes: { hiding: 0.4, thick: "#c3d0bd", float: { colour: "#a87a52", amount: 0.08 } },
  },
  {
    over: "oilskin",
    under: "chalk",
    changes: "over",
    becomes: { hiding: 0.4, float: { colour: "#d9c296", amount: 0.7 } },
  },
  {
    over: "sky",
    under: "lagoon",
    changes: "over",
    becomes: { thick: "#8fbfb4", pool: "#6fae9f" },
  },
  {
    over: "willow",
    under: "peat",
    changes: "over",
    becomes: { thick: "#80602e", pool: "#3a2a16", float: { colour: "#b98f4a", amount: 0.6 } },
  },
  {
    over: "soot",
    under: "oilskin",
    changes: "over",
    becomes: { thin: "#4a4038", float: { colour: "#6a6e72", amount: 0.6 }, flow: 0.5 },
  },
];

/** How the demo studio's clays look, by id; after reduction, raku or too hot a fire where that differs. */
export const CLAY_APPEARANCE: Readonly<
  Record<
    string,
    ClayLook & {
      readonly reduction?: Partial<ClayLook>;
      readonly raku?: Partial<ClayLook>;
      readonly overfired?: Partial<ClayLook>;
    }
  >
> = {
  "buff-stoneware": {
    bare: "#c9ad86",
    speck: "#6b4a30",
    specks: 0.2,
    grog: 0.45,
    overfired: { bare: "#8f7558", specks: 0.35 },
  },
  "white-stoneware": {
    bare: "#eae3d6",
    speck: "#a08a6a",
    specks: 0,
    grog: 0.12,
    overfired: { bare: "#d6cbb8" },
  },
  "ferry-stoneware": {
    bare: "#c4b49b",
    speck: "#5a3f2c",
    specks: 0.28,
    grog: 0.95,
    reduction: { bare: "#8f7560", speck: "#33221a", specks: 0.4 },
    raku: { bare: "#2a2725", specks: 0 },
  },
  "red-earthenware": {
    bare: "#c4673f",
    speck: "#8a4428",
    specks: 0.05,
    grog: 0.3,
    overfired: { bare: "#5a2e22" },
  },
  reclaim: {
    bare: "#b98a66",
    speck: "#7a4a2c",
    specks: 0.3,
    grog: 0.6,
    overfired: { bare: "#4f2f1f", speck: "#2f1c14" },
  },
};

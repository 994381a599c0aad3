import type { ClayLook, GlazeLook } from "./tile-plan.ts";

/** What a glaze's record does not tell: its optical nature. Kind, cones and surface come from the record. */
export type Appearance = Pick<GlazeLook, "thick" | "thin"> &
  Partial<
    Pick<GlazeLook, "raw" | "pool" | "hiding" | "flow" | "speck" | "float" | "metal" | "crystal">
  >;

/** An appearance, and how slow cooling or reduction change it. */
export interface GlazeAppearance extends Appearance {
  readonly slowlyCooled?: Partial<Appearance>;
  readonly reduction?: Partial<Appearance>;
}

/** How the demo studio's glazes look, by id: invented, as the studio is. */
export const GLAZE_APPEARANCE: Readonly<Record<string, GlazeAppearance>> = {
  // Bought, cone 5 to 6
  soot: { thin: "#6b4026", thick: "#17171a", hiding: 0.95, flow: 0.14 },
  tidewrack: {
    thin: "#8b8258",
    thick: "#4c6462",
    raw: "#cdb6ae",
    pool: "#3f5f68",
    flow: 0.42,
    float: { colour: "#8fa39a", amount: 0.3 },
    slowlyCooled: { float: { colour: "#9fb6bd", amount: 0.5 }, pool: "#5d8296" },
  },
  chalk: { thin: "#e6dfd0", thick: "#f4f1ea", hiding: 0.95, flow: 0.04 },
  plum: {
    thin: "#8f3a2c",
    thick: "#40233a",
    pool: "#301a30",
    flow: 0.32,
    float: { colour: "#5b2f45", amount: 0.3 },
  },
  sky: { thin: "#b9bdb8", thick: "#a9c6da", pool: "#86b0d0", hiding: 0.6, flow: 0.28 },
  hayrick: {
    thin: "#a9763a",
    thick: "#d3a94a",
    flow: 0.1,
    speck: { colour: "#8a4a20", amount: 0.18 },
  },
  moss: {
    thin: "#8a5428",
    thick: "#6f7a3d",
    flow: 0.08,
    float: { colour: "#80854c", amount: 0.25 },
  },
  brick: {
    thin: "#b5562e",
    thick: "#8f3f28",
    pool: "#3a2218",
    flow: 0.22,
    float: { colour: "#7a3524", amount: 0.35 },
  },
  lagoon: {
    thin: "#bfe0d4",
    thick: "#17969a",
    pool: "#0b6f78",
    hiding: 0.42,
    flow: 0.7,
    float: { colour: "#49b0ac", amount: 0.3 },
  },
  oilskin: {
    thin: "#c98730",
    thick: "#2a1a10",
    pool: "#140d09",
    hiding: 0.3,
    flow: 0.85,
    float: { colour: "#5a3414", amount: 0.4 },
  },
  kelp: {
    thin: "#a5813e",
    thick: "#394326",
    pool: "#27301c",
    hiding: 0.45,
    flow: 0.8,
    float: { colour: "#6b5a28", amount: 0.5 },
  },
  mist: {
    thin: "#e5dcc8",
    thick: "#dcdfe0",
    pool: "#9db4cc",
    hiding: 0.5,
    flow: 0.72,
    float: { colour: "#c2ccd4", amount: 0.25 },
  },
  sandbar: {
    thin: "#b58f5c",
    thick: "#dccfb8",
    flow: 0.15,
    speck: { colour: "#6b4a2c", amount: 0.5 },
  },
  mussel: {
    thin: "#5a4632",
    thick: "#1d2a4c",
    pool: "#141d3a",
    flow: 0.62,
    float: { colour: "#2c4068", amount: 0.4 },
    crystal: { colour: "#8f9db5", size: 2.1 },
  },
  "stillwater-clear": { thin: "#f2e9d8", thick: "#efe8d6", pool: "#dcd8bf", hiding: 0, flow: 0.4 },
  "stillwater-satin": {
    thin: "#f0ebe0",
    thick: "#ece8de",
    pool: "#e4e2da",
    hiding: 0.1,
    flow: 0.12,
  },

  // Bought, low fire
  "lantern-clear": { thin: "#f2e6d2", thick: "#efe2cc", hiding: 0, flow: 0.25 },
  marigold: { thin: "#a85a24", thick: "#e8901f", hiding: 0.55, flow: 0.15 },
  poolside: { thin: "#6fc3bd", thick: "#2fa7a8", pool: "#1b8a90", hiding: 0.35, flow: 0.3 },

  // Underglazes
  ink: { thin: "#3a3538", thick: "#1d1c20", hiding: 0.95, flow: 0 },
  poppy: { thin: "#d5695c", thick: "#c8382f", hiding: 0.62, flow: 0 },
  cornflower: { thin: "#6f87b8", thick: "#3d5fa8", hiding: 0.75, flow: 0 },
  leaf: { thin: "#7da06f", thick: "#4c8a4a", hiding: 0.75, flow: 0 },
  custard: { thin: "#e6cf94", thick: "#ecd27a", hiding: 0.62, flow: 0 },
  petal: { thin: "#e6bcbb", thick: "#e3a1a8", hiding: 0.7, flow: 0 },

  // Onglaze
  moonshell: { thin: "#d9c7cf", thick: "#c8b4c4", hiding: 0.06, flow: 0, metal: 0.55 },

  // Mixed here, cone 6
  saltern: { thin: "#f1f0e8", thick: "#eeede4", pool: "#dfe4d8", hiding: 0, flow: 0.4 },
  "saltern-iron": { thin: "#a8702c", thick: "#4f2c14", pool: "#331b0d", hiding: 0.12, flow: 0.42 },
  "saltern-rutile": {
    thin: "#c99c5c",
    thick: "#d8bf8c",
    pool: "#c9c8bd",
    hiding: 0.5,
    flow: 0.45,
    float: { colour: "#c3cbd0", amount: 0.55 },
  },
  "saltern-cobalt": { thin: "#5c7fc4", thick: "#1f3f9a", pool: "#142c78", hiding: 0.1, flow: 0.42 },
  eider: { thin: "#d9c09a", thick: "#f0ece4", flow: 0.06 },
  hoarfrost: {
    thin: "#c9ad7a",
    thick: "#e6d9b8",
    pool: "#e4dec8",
    flow: 0.55,
    float: { colour: "#d6c08e", amount: 0.4 },
    slowlyCooled: { thick: "#d0b886", float: { colour: "#dcc898", amount: 0.4 } },
    crystal: { colour: "#f6f0de", size: 1.3 },
  },
  rosehip: {
    thin: "#3a2118",
    thick: "#5e2e1e",
    flow: 0.28,
    float: { colour: "#4a2318", amount: 0.4 },
    slowlyCooled: {
      thick: "#a5371c",
      pool: "#ad3a1a",
      float: { colour: "#8c2f1c", amount: 0.45 },
      speck: { colour: "#2e1510", amount: 0.22 },
    },
  },
  shrimp: {
    thin: "#e8cdbd",
    thick: "#c96a78",
    flow: 0.3,
    float: { colour: "#d98f95", amount: 0.35 },
  },
  verdigris: {
    thin: "#5fb3a5",
    thick: "#2f8f86",
    pool: "#2b7f68",
    hiding: 0.85,
    flow: 0.1,
    float: { colour: "#4aa090", amount: 0.45 },
  },
  heron: {
    thin: "#6b4a34",
    thick: "#4a6480",
    pool: "#3c5878",
    flow: 0.62,
    float: { colour: "#c3c8c4", amount: 0.6 },
  },
  "liner-white": { thin: "#e8e0d0", thick: "#f3f2ee", hiding: 0.95, flow: 0.25 },
  ditchbank: {
    thin: "#8a4520",
    thick: "#33201a",
    flow: 0.35,
    float: { colour: "#4a2a1a", amount: 0.35 },
  },
  "half-tide": {
    thin: "#c8bd9c",
    thick: "#b9c2b2",
    flow: 0.25,
    float: { colour: "#a8b5a6", amount: 0.35 },
  },
  "white-slip": { thin: "#e6dcc8", thick: "#efe9de", hiding: 0.85, flow: 0 },
  "iron-wash": { thin: "#8a4f2e", thick: "#5b3322", hiding: 0.6, flow: 0 },

  // Mixed here, cone 10
  ditchwater: {
    thin: "#e2d6a6",
    thick: "#d9c892",
    pool: "#c9b878",
    hiding: 0.12,
    flow: 0.42,
    reduction: { thin: "#b3ab90", thick: "#9fb3a0", pool: "#76947f" },
  },
  peat: {
    thin: "#7a4220",
    thick: "#3a2216",
    flow: 0.4,
    speck: { colour: "#7a3a1c", amount: 0.08 },
    reduction: { thin: "#8a4a20", thick: "#14100e", pool: "#0e0c0c" },
  },
  willow: {
    thin: "#cdb978",
    thick: "#b9a866",
    hiding: 0.2,
    flow: 0.95,
    float: { colour: "#d6c78c", amount: 0.5 },
    reduction: {
      thin: "#a8a36a",
      thick: "#7f8247",
      pool: "#566338",
      float: { colour: "#b0a870", amount: 0.6 },
    },
  },
  cockscomb: {
    thin: "#d8dcc8",
    thick: "#bcd3b4",
    pool: "#a6c4a4",
    hiding: 0.15,
    flow: 0.5,
    reduction: {
      thin: "#d9cbb8",
      thick: "#9a1f22",
      pool: "#6d1418",
      hiding: 0.6,
      float: { colour: "#7a161c", amount: 0.5 },
    },
  },
  "raku-clear": { thin: "#d6cdbd", thick: "#ece6dc", hiding: 0.6, flow: 0.35 },

  // Blends
  "eider-4-cobalt-1": { thin: "#c6b6b2", thick: "#b9b3d6", flow: 0.1 },
  "eider-3-cobalt-2": {
    thin: "#a69cb4",
    thick: "#8f93cc",
    flow: 0.18,
    speck: { colour: "#38448c", amount: 0.25 },
  },
  "eider-2-cobalt-3": {
    thin: "#8f98c0",
    thick: "#6f83c4",
    pool: "#5b70b8",
    hiding: 0.55,
    flow: 0.32,
  },
  "eider-1-cobalt-4": {
    thin: "#7d93cc",
    thick: "#4565b8",
    pool: "#2f4fa4",
    hiding: 0.35,
    flow: 0.4,
  },
  "iron-2-rutile-1": {
    thin: "#b98a3e",
    thick: "#8a5224",
    pool: "#5f3416",
    hiding: 0.3,
    flow: 0.45,
    float: { colour: "#a8763a", amount: 0.4 },
  },
  "iron-1-rutile-2": {
    thin: "#b07c3c",
    thick: "#b98545",
    hiding: 0.45,
    flow: 0.45,
    float: { colour: "#d8b377", amount: 0.55 },
  },
  "iron-2-cobalt-1": {
    thin: "#5c4a2a",
    thick: "#22211f",
    pool: "#171817",
    hiding: 0.35,
    flow: 0.42,
  },
  "iron-1-cobalt-2": {
    thin: "#4a4a54",
    thick: "#1d2433",
    pool: "#131a28",
    hiding: 0.3,
    flow: 0.42,
  },
  "rutile-2-cobalt-1": {
    thin: "#b79e78",
    thick: "#8795a6",
    hiding: 0.5,
    flow: 0.45,
    float: { colour: "#b79e78", amount: 0.5 },
  },
  "rutile-1-cobalt-2": {
    thin: "#7f8cae",
    thick: "#45639c",
    pool: "#34508c",
    hiding: 0.4,
    flow: 0.45,
    float: { colour: "#8f9fbc", amount: 0.45 },
  },
  "one-of-each": {
    thin: "#6b4a30",
    thick: "#59656c",
    hiding: 0.5,
    flow: 0.45,
    float: { colour: "#7a6248", amount: 0.45 },
  },
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
    overfired: { bare: "#6b452e" },
  },
};

import type { GlazeAppearance } from "./appearance-kinds.ts";

/** How the glazes look that the demo studio buys, by id: invented, as the studio is. */
export const BOUGHT_GLAZES: Readonly<Record<string, GlazeAppearance>> = {
  // Cone 5 to 6
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
    pool: "#7d9dc4",
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
    crystal: { colour: "#a3adbd", size: 2.1 },
  },
  "stillwater-clear": { thin: "#f2e9d8", thick: "#efe8d6", pool: "#dcd8bf", hiding: 0, flow: 0.4 },
  "stillwater-satin": {
    thin: "#f0ebe0",
    thick: "#ece8de",
    pool: "#e4e2da",
    hiding: 0.1,
    flow: 0.12,
  },

  // Low fire
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
};

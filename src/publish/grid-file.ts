/**
 * The files that the grid is drawn with: one that every view needs, and for each cone the squares that
 * were tried at it, in parts. What lies in a list is named by its place there. An empty key is what
 * nobody wrote down: the cone of a tile that was not fired, a clay.
 */
import type { Atmosphere, Movement } from "../terms/choices.ts";
import type { Cone } from "../terms/cones.ts";

/** What can be chosen: what stands in an address, and what a reader sees. */
export interface GridChoices {
  readonly keys: readonly string[];
  readonly labels: readonly string[];
}

export interface GridIndex {
  readonly glazes: readonly GridGlaze[];
  /** From cool to hot, and how many files hold the squares of each. */
  readonly cones: GridChoices & { readonly parts: readonly number[] };
  readonly clays: GridChoices;
  readonly atmospheres: {
    readonly keys: readonly (Atmosphere | "")[];
    readonly labels: readonly string[];
  };
  /** Faults in words. */
  readonly faults: readonly string[];
  /** The cone that a view begins with: the one at which most was tried. */
  readonly first: number;
  /** Every pair that some tile has: what lies over, what under, and the cones. */
  readonly tried: readonly (readonly [over: number, under: number, ...cones: number[]])[];
}

export interface GridGlaze {
  readonly id: string;
  readonly name: string;
  readonly stocked: boolean;
  /** From the label, as all of these. */
  readonly cones: readonly [from: Cone, to: Cone] | null;
  readonly moves: Movement | null;
}

/** What was measured of a glaze alone at one cone: `#rrggbb`, what it is called. */
export type GridColour = readonly [glaze: number, hex: string, name: string];

/**
 * What was tried of one glaze over another, or of one alone where both are the same: on one clay in one
 * kind of fire. Of the rows of two glazes that one comes first whose photograph tells most.
 */
export type GridRow = readonly [
  over: number,
  under: number,
  clay: number,
  atmosphere: number,
  tiles: number,
  /** The tile that is shown, and the address of its photograph; empty where it has none. */
  code: string,
  picture: string,
  /** How many of the tiles were measured for it, and the farthest that one ran, in millimetres. */
  measured: number,
  run: number,
  yes: number,
  changed: number,
  no: number,
  faults: readonly number[],
];

export interface GridPart {
  readonly rows: readonly GridRow[];
  readonly colours: readonly GridColour[];
}

import type { Chart } from "./chart.ts";
import type { Grid } from "./grid.ts";

/** A fired tile's skin on its chart: what the light meets. */
export interface Skin {
  readonly chart: Chart;
  /** Reflectance, linear. */
  readonly red: Grid;
  readonly green: Grid;
  readonly blue: Grid;
  /** Height above the plain form, in millimetres. */
  readonly height: Grid;
  /** 0 a mirror, 1 dust. */
  readonly roughness: Grid;
  /** How much of a glassy reflection the surface has: 0 bare clay, 1 glaze. */
  readonly glass: Grid;
  /** 0 glass, 1 metal. */
  readonly metal: Grid;
}

/** What the catalogue holds of glazes beside one another. */
import type { MixFigure, MixFigures } from "../../chemistry/mix-figures.ts";
import type { Cooling } from "../../firing/cooling.ts";
import type { Atmosphere, Surface } from "../../terms/choices.ts";
import type { Cone } from "../../terms/cones.ts";
import type { FireOnGlaze } from "../colours/colour-types.ts";
import type { Link } from "../link.ts";

export type { Cooling, MixFigure, MixFigures };

export type Outcome = Surface | "crazed";

export interface SeenOutcome {
  readonly outcome: Outcome;
  /** The codes of the tiles that show it. */
  readonly tiles: readonly string[];
}

/** A glaze in a company, by its tiles there. */
export interface PlacedGlaze {
  readonly glaze: Link;
  /** What it measured alone, as `#rrggbb`; null where it is not known. */
  readonly colour: string | null;
  readonly figures: MixFigures;
  readonly seen: readonly SeenOutcome[];
}

/** Mixed glazes fired alone to one cone, cooled in one way and in one kind of fire, each with a tile that tells its surface. */
export interface Company {
  readonly cone: Cone;
  readonly cooling: Cooling;
  readonly fire: FireOnGlaze | null;
  /** The air of its firings; null among them where nobody wrote it down. */
  readonly airs: readonly (Atmosphere | null)[];
  /** In the order of their names. */
  readonly glazes: readonly PlacedGlaze[];
}

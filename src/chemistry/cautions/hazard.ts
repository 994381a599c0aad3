import type { Tag } from "../../terms/atomic-weights.ts";
import type { Oxide } from "../../terms/oxides.ts";

/** What is published of a hazard. */
export interface Statement {
  /** A clause that follows the name of the substance. */
  readonly says: string;
  readonly source: string;
  readonly tag: Tag;
}

/** An oxide that is harmful as a raw powder, or in food from the fired glaze. */
export interface OxideHazard {
  readonly oxide: Oxide;
  /** What a potter calls what is in it. */
  readonly substance: string;
  readonly statements: readonly Statement[];
  /** Told loudly however little there is. */
  readonly isAlwaysLoud: boolean;
  /**
   * Weight per cent of the fired glaze from which there is so much of it that it is told loudly;
   * null where amount makes no difference. Common practice, no source.
   */
  readonly heavyFrom: number | null;
}

/** A material that is harmful as such, by the id of its theoretical mineral. */
export interface MaterialHazard {
  readonly material: string;
  readonly statement: Statement;
  /** Whether Tilebook never suggests it. */
  readonly isShunned: boolean;
}

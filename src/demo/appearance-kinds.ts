import type { GlazeLook } from "./tile-plan.ts";

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

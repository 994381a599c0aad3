/** From a formula to a batch, by the classical procedure of equivalents. */
import { type Oxide, type OxideAmounts, oxideAmounts } from "../terms/oxides.ts";
import type { Analysis } from "./analysis.ts";
import { weightsToMoles } from "./unity.ts";

/** A material, and the oxide that it is taken to bring. */
export interface Bringer {
  readonly material: string;
  readonly analysis: Analysis;
  readonly brings: Oxide;
}

export interface Batch {
  /** Grams of each material for the formula in moles, in the order given; never below zero. */
  readonly portions: readonly { readonly material: string; readonly weight: number }[];
  /** Moles still wanting (above zero) or brought too many (below zero); exact batches have none. */
  readonly leftOver: OxideAmounts;
}

/** Moles below which a remainder is the rounding of the numbers. */
const nothing = 1e-9;

/**
 * Takes the materials in turn; each brings all that is still wanting of its oxide, and what comes
 * with it is taken off the rest. So feldspar comes first, then the other fluxes, then clay for the
 * remaining alumina, and silica last.
 *
 * Source: C. W. Parmelee, Ceramic Glazes (1948), and C. F. Binns, The Potter's Craft (1910), for
 * the procedure (from memory).
 *
 * @param formula moles of each oxide
 */
export function formulaToBatch(formula: OxideAmounts, bringers: readonly Bringer[]): Batch {
  let wanting = formula;
  const portions = bringers.map(({ material, analysis, brings }) => {
    const inHundredGrams = weightsToMoles(analysis.oxides);
    const molesEach = inHundredGrams[brings] ?? 0;
    const hundreds = molesEach > 0 ? Math.max(0, wanting[brings] ?? 0) / molesEach : 0;
    wanting = takeOff(wanting, inHundredGrams, hundreds);
    return { material, weight: 100 * hundreds };
  });
  return { portions, leftOver: wanting };
}

function takeOff(from: OxideAmounts, moles: OxideAmounts, times: number): OxideAmounts {
  return oxideAmounts((oxide) => {
    const left = (from[oxide] ?? 0) - times * (moles[oxide] ?? 0);
    return Math.abs(left) < nothing ? 0 : left;
  });
}

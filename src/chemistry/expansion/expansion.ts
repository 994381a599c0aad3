/** The thermal expansion that published factors give a glaze. */
import { type Oxide, presentOxides } from "../../terms/oxides.ts";
import { appen } from "./appen.ts";
import { englishTurner } from "./english-turner.ts";
import type { ExpansionFactor, ExpansionModel, ExpansionSet, Glass } from "./expansion-set.ts";
import { mayerHavas } from "./mayer-havas.ts";
import { winkelmannSchott } from "./winkelmann-schott.ts";

/** The sets in use, the one that comes nearest to measured glasses first. */
export const expansionSets: readonly ExpansionSet[] = [
  appen,
  englishTurner,
  winkelmannSchott,
  mayerHavas,
];

/** A mean linear expansion, computed. */
export interface Expansion {
  readonly model: ExpansionModel;
  /** Linear, per kelvin: 6.1e-6 and the like. */
  readonly perKelvin: number;
  /** The temperatures that it is meant for, in °C. */
  readonly between: readonly [from: number, to: number];
  /** Oxides that the set has no factor for, counted as nothing, or that exceed its limits. */
  readonly outside: readonly Oxide[];
}

/**
 * The expansion of a fired glaze by every set that covers it. The sets disagree: they were made
 * for different glasses and temperatures, and none was made for what the kiln leaves of a glaze
 * on a clay. A set without factors for more than a tenth of the glaze by weight gives no figure.
 */
export function findExpansions(glass: Glass): readonly Expansion[] {
  return expansionSets.flatMap((set) => {
    const without = oxidesWithoutFactor(set, glass);
    const uncovered = without.reduce((sum, oxide) => sum + (glass.weightPercent[oxide] ?? 0), 0);
    if (uncovered > mostUncovered) return [];
    const outside = [...without, ...set.outsideLimits(glass)];
    const { model, between } = set;
    return [{ model, perKelvin: perKelvinBy(set, glass), between, outside }];
  });
}

const mostUncovered = 10;

function oxidesWithoutFactor(set: ExpansionSet, glass: Glass): readonly Oxide[] {
  const present = presentOxides(glass.weightPercent).map(([oxide]) => oxide);
  return present.filter((oxide) => set.factors[oxide] === undefined);
}

/** Appen's factors go with mole fractions, the others with weight per cent. */
function perKelvinBy(set: ExpansionSet, glass: Glass): number {
  const isByMoles = set.basis === "mole per cent";
  const shares = isByMoles ? glass.molePercent : glass.weightPercent;
  const sum = presentOxides(shares).reduce(
    (total, [oxide, share]) => total + share * factorFor(set.factors[oxide], glass),
    0,
  );
  const linear = set.published === "cubical" ? sum / 3 : sum;
  return (isByMoles ? linear / 100 : linear) * 1e-7;
}

function factorFor(factor: ExpansionFactor | undefined, glass: Glass): number {
  if (factor === undefined) return 0;
  const { value } = factor;
  return typeof value === "number" ? value : value(glass.molePercent);
}

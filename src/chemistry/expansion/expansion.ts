/** The thermal expansion that published factors give a glaze. */
import { alkalis, type Oxide, presentOxides } from "../../terms/oxides.ts";
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
  /**
   * Linear, per kelvin: 6.1e-6 and the like. Null where the glaze is beyond what the set can tell
   * of: `outside` says by which oxides.
   */
  readonly perKelvin: number | null;
  /** How far the figure may be off on a glaze, per kelvin; null without a figure. */
  readonly doubt: number | null;
  /** The temperatures that it is meant for, in °C. */
  readonly between: readonly [from: number, to: number];
  /** Oxides that the set has no factor for, or that exceed its limits. */
  readonly outside: readonly Oxide[];
}

/**
 * The least doubt of any additive set on a glaze, per kelvin. A. Fluegel's statistical model of the
 * expansion of some 900 silicate glasses from over 100 publications (glassproperties.com, "Thermal
 * expansion of silicate glasses at 210 °C", summary compared) has a standard error of 0.37e-6 and
 * calls it about half of that of earlier models. No glaze is nearer to those than glasses are.
 */
export const leastDoubt = 0.75e-6;

/**
 * The expansion of a fired glaze by every set. The sets disagree: they were made for different
 * glasses and temperatures, and none was made for what the kiln leaves of a glaze on a clay. What a
 * set has no factor for counts like the rest of the glaze, with a doubt as large as the factor may
 * be; a set without factors for more than a tenth of the glaze by weight, or beyond its limits of
 * boron or lithia, gives no figure.
 */
export function findExpansions(glass: Glass): readonly Expansion[] {
  return expansionSets.map((set) => {
    const without = oxidesWithoutFactor(set, glass);
    const uncovered = without.reduce((sum, oxide) => sum + (glass.weightPercent[oxide] ?? 0), 0);
    const ended = oxidesBeyondEnd(set, glass);
    const outside = [...new Set([...without, ...set.outsideLimits(glass), ...ended])];
    const { model, between } = set;
    if (uncovered > mostUncovered || ended.length > 0)
      return { model, perKelvin: null, doubt: null, between, outside };
    return { model, ...figureBy(set, glass, without), between, outside };
  });
}

const mostUncovered = 10;

function oxidesBeyondEnd(set: ExpansionSet, { weightPercent }: Glass): readonly Oxide[] {
  return presentOxides(set.endsAt)
    .filter(([oxide, most]) => (weightPercent[oxide] ?? 0) > most)
    .map(([oxide]) => oxide);
}

/** The expansion of what the set covers, and the doubt with what it does not. */
function figureBy(set: ExpansionSet, glass: Glass, without: readonly Oxide[]) {
  const shares = set.basis === "mole per cent" ? glass.molePercent : glass.weightPercent;
  const missing = without.reduce((sum, oxide) => sum + (shares[oxide] ?? 0), 0);
  const ofMissing = missing * largestEarth(set);
  return {
    perKelvin: (additiveExpansion(set, glass) * 100) / (100 - missing),
    doubt: Math.max(leastDoubt, set.rmsError) + ofMissing,
  };
}

/** The largest factor of a set but for the alkalis, per kelvin for each per cent. */
function largestEarth(set: ExpansionSet): number {
  const values = Object.entries(set.factors)
    .filter(([oxide]) => !alkalis.some((alkali) => alkali === oxide))
    .map(([, { value }]) => (typeof value === "number" ? value : 0));
  return perPercent(set, Math.max(...values));
}

/** A factor as published, as an expansion per kelvin for one per cent. */
function perPercent({ basis, published }: ExpansionSet, factor: number): number {
  const linear = published === "cubical" ? factor / 3 : factor;
  return (basis === "mole per cent" ? linear / 100 : linear) * 1e-7;
}

function oxidesWithoutFactor(set: ExpansionSet, glass: Glass): readonly Oxide[] {
  const present = presentOxides(glass.weightPercent).map(([oxide]) => oxide);
  return present.filter((oxide) => set.factors[oxide] === undefined);
}

/**
 * The plain sum of a set's factors, per kelvin, whatever its limits; oxides without a factor count as
 * nothing. Appen's factors go with mole fractions, the others with weight per cent.
 */
export function additiveExpansion(set: ExpansionSet, glass: Glass): number {
  const shares = set.basis === "mole per cent" ? glass.molePercent : glass.weightPercent;
  const sum = presentOxides(shares).reduce(
    (total, [oxide, share]) => total + share * factorFor(set.factors[oxide], glass),
    0,
  );
  return perPercent(set, sum);
}

function factorFor(factor: ExpansionFactor | undefined, glass: Glass): number {
  if (factor === undefined) return 0;
  const { value } = factor;
  return typeof value === "number" ? value : value(glass.molePercent);
}

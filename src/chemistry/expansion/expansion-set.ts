/** What an additive set of expansion factors is: one published table. */
import type { Tag } from "../../terms/atomic-weights.ts";
import type { Oxide, OxideAmounts } from "../../terms/oxides.ts";

export type ExpansionModel = "appen" | "english-turner" | "mayer-havas" | "winkelmann-schott";

/** A fired glass, in the two ways that factors are given for. */
export interface Glass {
  readonly weightPercent: OxideAmounts;
  readonly molePercent: OxideAmounts;
}

export interface ExpansionSet {
  readonly model: ExpansionModel;
  /** As its authors are cited. */
  readonly name: string;
  readonly basis: "mole per cent" | "weight per cent";
  /** What the factors were published as; a cubical expansion is three times the linear one. */
  readonly published: "cubical" | "linear";
  /** The temperatures it was made for, in °C. */
  readonly between: readonly [from: number, to: number];
  /** The glasses it was made for, and where it fails. */
  readonly limits: string;
  readonly source: string;
  /**
   * Its root mean square error on eight glasses of known composition and expansion, per kelvin
   * (tests/reference/expansion-examples.csv).
   */
  readonly rmsError: number;
  /** The set whose factors it took over for most oxides: the two are one witness, not two. */
  readonly takenFrom?: ExpansionModel;
  readonly factors: Readonly<Partial<Record<Oxide, ExpansionFactor>>>;
  /** The oxides whose share lies outside what the set was made for. */
  readonly outsideLimits: (glass: Glass) => readonly Oxide[];
  /** Weight per cent of an oxide up to which the set can be trusted; beyond it there is no figure. */
  readonly endsAt: OxideAmounts;
}

export interface ExpansionFactor {
  /** Linear or cubical as the set is, in 10⁻⁷ per kelvin for each per cent. */
  readonly value: number | ((molePercent: OxideAmounts) => number);
  readonly tag: Tag;
}

/**
 * None of the measured glasses that the errors of all sets rest on holds more boric oxide than this
 * (weight per cent; tests/reference/expansion-examples.csv), and its effect turns round near it.
 */
export const mostBoricOxide = 13;

/**
 * Lithia beyond which the factor of Winkelmann & Schott, kept by Mayer & Havas, ends their figure,
 * in weight per cent: at 1 it differs from Appen's by 5e-7 already (worked out from both factors).
 */
export const mostJenaLithia = 1;

/** Lithia that may go unnoticed where a set has no factor for it, in weight per cent. */
export const traceOfLithia = 0.1;

/** Factors that were compared with a copy of their source. */
export function checked(factors: Readonly<Partial<Record<Oxide, ExpansionFactor["value"]>>>) {
  return tagged(factors, "checked");
}

/** Factors recalled from their source and not compared. */
export function recalled(factors: Readonly<Partial<Record<Oxide, ExpansionFactor["value"]>>>) {
  return tagged(factors, "from memory");
}

function tagged(
  factors: Readonly<Partial<Record<Oxide, ExpansionFactor["value"]>>>,
  tag: Tag,
): ExpansionSet["factors"] {
  return Object.fromEntries(
    Object.entries(factors).map(([oxide, value]) => [oxide, { value, tag }]),
  );
}

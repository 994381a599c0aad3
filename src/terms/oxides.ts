/**
 * The oxides that analyses are stated in, the fluxes among them, and how their formulas are set.
 */
import { atomicWeights, type Element, isElement } from "./atomic-weights.ts";

/**
 * Glass formers first, then opacifiers, fluxes and colourants. A fired glaze states its iron as
 * Fe2O3 alone: FeO stands here for analyses that give it.
 */
export const oxides = [
  "SiO2",
  "Al2O3",
  "B2O3",
  "Fe2O3",
  "FeO",
  "TiO2",
  "ZrO2",
  "SnO2",
  "P2O5",
  "Li2O",
  "Na2O",
  "K2O",
  "MgO",
  "CaO",
  "SrO",
  "BaO",
  "ZnO",
  "PbO",
  "MnO",
  "CoO",
  "NiO",
  "CuO",
  "Cr2O3",
  "V2O5",
  "MoO3",
  "CdO",
  "Sb2O3",
  "Ag2O",
  "Bi2O3",
  "CeO2",
  "Pr2O3",
  "Nd2O3",
  "Er2O3",
] as const;
export type Oxide = (typeof oxides)[number];

/** The oxides that a unity formula sums to 1; colouring oxides are stated relative to them. */
export const fluxes = [
  "Li2O",
  "Na2O",
  "K2O",
  "MgO",
  "CaO",
  "SrO",
  "BaO",
  "ZnO",
  "PbO",
] as const satisfies readonly Oxide[];

export const alkalis = ["Li2O", "Na2O", "K2O"] as const satisfies readonly Oxide[];

/** So much of each oxide; an oxide left out is absent. The unit is told by whoever holds it. */
export type OxideAmounts = Readonly<Partial<Record<Oxide, number>>>;

/** What one formula unit of an oxide is made of. */
export interface OxideMakeUp {
  readonly element: Element;
  readonly atoms: number;
  readonly oxygens: number;
  /** g/mol, from the atomic weights. */
  readonly molarMass: number;
}

/** Every oxide's make-up, read from its name. */
export const makeUpOf: Readonly<Record<Oxide, OxideMakeUp>> = Object.fromEntries(
  oxides.map((oxide) => [oxide, readMakeUp(oxide)]),
) as Record<Oxide, OxideMakeUp>;

function readMakeUp(oxide: Oxide): OxideMakeUp {
  const [, element = "", atomsText, oxygensText] = /^([A-Z][a-z]?)(\d?)O(\d?)$/u.exec(oxide) ?? [];
  if (!isElement(element)) throw new Error(`${oxide} is no oxide of an element with a weight`);
  const atoms = Number(atomsText || 1);
  const oxygens = Number(oxygensText || 1);
  const molarMass = atoms * atomicWeights[element].weight + oxygens * atomicWeights.O.weight;
  return { element, atoms, oxygens, molarMass };
}

export function isOxide(text: string): text is Oxide {
  return Object.hasOwn(makeUpOf, text);
}

/** The oxides of which there is some, in the order of `oxides`, each with its amount. */
export function presentOxides(amounts: OxideAmounts): readonly (readonly [Oxide, number])[] {
  const present: (readonly [Oxide, number])[] = [];
  for (const oxide of oxides) {
    const amount = amounts[oxide];
    if (amount !== undefined && amount !== 0) present.push([oxide, amount]);
  }
  return present;
}

/** Oxide amounts made from a value for each oxide, in the order of `oxides`; zeros are left out. */
export function oxideAmounts(amountOf: (oxide: Oxide) => number): OxideAmounts {
  const amounts: Partial<Record<Oxide, number>> = {};
  for (const oxide of oxides) {
    const amount = amountOf(oxide);
    if (amount !== 0) amounts[oxide] = amount;
  }
  return amounts;
}

/** A stretch of a formula, set on the line or as a subscript. */
export interface FormulaPiece {
  readonly text: string;
  readonly subscript: boolean;
}

const counts = /(?<=[\p{L})])\d+(?:\.\d+)?/gu;

/**
 * Cuts a formula into what stands on the line and what is a subscript: `Al2O3` gives `Al`, `2`
 * lowered, `O`, `3` lowered; the 6 of `6SiO2` stays on the line.
 */
export function subscriptPieces(formula: string): readonly FormulaPiece[] {
  const pieces: FormulaPiece[] = [];
  let end = 0;
  for (const match of formula.matchAll(counts)) {
    if (match.index > end) pieces.push({ text: formula.slice(end, match.index), subscript: false });
    pieces.push({ text: match[0], subscript: true });
    end = match.index + match[0].length;
  }
  if (end < formula.length) pieces.push({ text: formula.slice(end), subscript: false });
  return pieces;
}

const subscriptDigits = "₀₁₂₃₄₅₆₇₈₉";

/** A formula in running text and in a search index: `K2O` gives `K₂O`. */
export function toUnicodeSubscripts(formula: string): string {
  return formula.replace(counts, (count) =>
    count.replace(/\d/gu, (digit) => subscriptDigits.charAt(Number(digit))),
  );
}

/** A formula as it is typed: `K₂O` gives `K2O`. Every character keeps its place. */
export function fromUnicodeSubscripts(formula: string): string {
  return formula.replace(/[₀-₉]/gu, (digit) => String(subscriptDigits.indexOf(digit)));
}

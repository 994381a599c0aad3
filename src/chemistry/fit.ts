/**
 * How a glaze and a clay shrink together as they cool: a difference of two numbers and which way
 * it tends, never a verdict.
 */
import { type Expansion, expansionSets } from "./expansion/expansion.ts";
import type { ExpansionModel, ExpansionSet } from "./expansion/expansion-set.ts";

/** The measured mean linear expansion of a clay. */
export interface ClayExpansion {
  /** Per kelvin: 6.5e-6 and the like. */
  readonly perKelvin: number;
  /** The temperatures it was measured between, in °C, where they were recorded. */
  readonly between?: readonly [from: number, to: number] | undefined;
}

export interface Fit {
  readonly model: ExpansionModel;
  /** Who published the factors; all of them where sets share factors and are one witness. */
  readonly by: string;
  /** How much more the glaze expands than the clay, per kelvin; negative where it expands less. */
  readonly difference: number;
  /**
   * What the glaze is put under as both cool; `undecided` where the difference is no more than
   * twice the doubt of the figure.
   */
  readonly tendency: "compression" | "tension" | "undecided";
  /** The same in a sentence, without its full stop. */
  readonly message: string;
  /** What keeps the two numbers from comparing exactly; sentences without full stops. */
  readonly reservations: readonly string[];
}

/**
 * Compares a computed expansion with a clay's measured one. What shrinks more is pulled by what
 * shrinks less: mechanics of a bonded pair, as in F. Singer & S. S. Singer, Industrial Ceramics
 * (1963), on crazing and shivering (from memory).
 */
export function compareFit(glaze: Expansion, clay: ClayExpansion): Fit | null {
  if (glaze.perKelvin === null || glaze.doubt === null) return null;
  const set = setOf(glaze.model);
  const by = witnessName(set);
  const difference = glaze.perKelvin - clay.perKelvin;
  const tendency = Math.abs(difference) <= 2 * glaze.doubt ? "undecided" : sideOf(difference);
  return {
    model: glaze.model,
    by,
    difference,
    tendency,
    message: describe(tendency, difference, by, glaze.doubt),
    reservations: findReservations(glaze, clay, set),
  };
}

/**
 * The fit by every witness: sets that share their factors speak once, by the first that has a
 * figure.
 */
export function compareFits(expansions: readonly Expansion[], clay: ClayExpansion): readonly Fit[] {
  const fits = expansions.flatMap((by) => compareFit(by, clay) ?? []);
  return fits.filter((fit, i) => fits.findIndex(({ by }) => by === fit.by) === i);
}

/** `Appen`; `Winkelmann & Schott and Mayer & Havas` for sets that share their factors. */
export function witnessName({ model, takenFrom }: ExpansionSet): string {
  const first = takenFrom ?? model;
  const family = expansionSets.filter((set) => set.model === first || set.takenFrom === first);
  return family.map(({ name }) => name).join(" and ");
}

function sideOf(difference: number): Fit["tendency"] {
  return difference > 0 ? "tension" : "compression";
}

function setOf(model: ExpansionModel): ExpansionSet {
  const set = expansionSets.find((candidate) => candidate.model === model);
  if (!set) throw new Error(`There are no expansion factors called ${model}`);
  return set;
}

/** 6.1e-7 as 0.61 × 10⁻⁶. */
function perMillion(perKelvin: number): string {
  return `${(Math.abs(perKelvin) * 1e6).toFixed(1)} × 10⁻⁶ per kelvin`;
}

function describe(
  tendency: Fit["tendency"],
  difference: number,
  by: string,
  doubt: number,
): string {
  const amount = perMillion(difference);
  if (tendency === "tension")
    return `By ${by} the glaze shrinks ${amount} more than the clay as they cool: the clay holds it stretched, which tends towards crazing`;
  if (tendency === "compression")
    return `By ${by} the glaze shrinks ${amount} less than the clay as they cool: the clay squeezes it, which glazes bear better than being stretched; a great deal of it tends towards shivering`;
  return `By ${by} glaze and clay differ by ${amount}, less than twice what such a figure may be off (${perMillion(doubt)}): the numbers do not say which way it tends`;
}

function findReservations(
  glaze: Expansion,
  clay: ClayExpansion,
  set: ExpansionSet,
): readonly string[] {
  const ranges = compareRanges(glaze.between, clay.between);
  const outside =
    glaze.outside.length > 0
      ? `The factors of ${set.name} do not cover all of this glaze: ${glaze.outside.join(", ")}`
      : undefined;
  const made =
    "Thickness, what the glaze takes from the clay, and the firing all change the fit: fired tests on this clay decide";
  return [ranges, outside, made].filter((reservation) => reservation !== undefined);
}

function compareRanges(
  glaze: readonly [number, number],
  clay: ClayExpansion["between"],
): string | undefined {
  if (!clay) return "It is not recorded between which temperatures the clay was measured";
  if (clay[0] === glaze[0] && clay[1] === glaze[1]) return undefined;
  return `The clay was measured between ${clay.join(" and ")} °C, and the factors are meant for ${glaze.join(" to ")} °C: such numbers compare roughly`;
}

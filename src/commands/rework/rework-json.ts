/** The answer of `tilebook rework` as a program reads it. */
import type { Caution } from "../../chemistry/cautions/cautions.ts";
import type { Portion } from "../../chemistry/recipe.ts";
import { findLargestDifference, type Unreached } from "../../chemistry/rework-distance.ts";
import type { ReworkFigures } from "../../chemistry/rework-figures.ts";
import type { GlazeProposal, ReworkedGlaze, WeighedGlaze } from "../../chemistry/rework-glaze.ts";
import type { Exchange } from "../../chemistry/swap.ts";
import { rounded } from "../../publish/data/numbers.ts";
import { type OxideAmounts, oxides } from "../../terms/oxides.ts";
import type { ReworkQuestion } from "./rework-text.ts";

/** One JSON object; amounts to six decimals, `null` where there is nothing to say. */
export function renderReworkAsJson({ id, without }: ReworkQuestion, answer: ReworkedGlaze): string {
  const { before, wanted, proposals, lostAddition, sources, cautions } = answer;
  const found = {
    glaze: id,
    without,
    before: describeGlaze(before),
    lostAddition: lostAddition && describePortion(lostAddition),
    proposals: proposals.map((proposal) => describeProposal(proposal, wanted)),
    sources: sources.map(({ oxide, material, why }) => ({ oxide, material, why })),
    cautions: cautions.map(describeCaution),
  };
  return JSON.stringify(found, null, 2);
}

function describeGlaze({ base, additions, figures }: WeighedGlaze) {
  return {
    base: base.map(describePortion),
    additions: additions.map(describePortion),
    ...describeFigures(figures),
  };
}

function describeProposal(proposal: GlazeProposal, wanted: OxideAmounts) {
  const { kind, rework, exchange, additionExchange, comingIn, additionStrength } = proposal;
  const { oxide, difference } = findLargestDifference(wanted, rework.unity);
  return {
    kind,
    ...describeGlaze(proposal),
    exchange: describeExchange(exchange ?? additionExchange),
    comingIn,
    additionStrength: rounded(additionStrength, 6),
    unity: describeUnity(wanted, rework.unity),
    distance: rounded(rework.distance, 6),
    largestDifference: { oxide, difference: rounded(difference, 6) },
    unreached: rework.unreached.map(describeUnreached),
    cautions: proposal.cautions.map(describeCaution),
  };
}

function describePortion({ material, parts }: Portion) {
  return { material, parts: rounded(parts, 6) };
}

function describeExchange(exchange: Exchange | null) {
  return (
    exchange && {
      out: describePortion(exchange.out),
      into: describePortion(exchange.into),
      of: exchange.of,
    }
  );
}

function describeFigures({ silicaToAlumina, expansions, cost, typical }: ReworkFigures) {
  const isUnknown = cost.known === 0 && cost.unpriced.length > 0;
  return {
    silicaToAlumina: silicaToAlumina === null ? null : rounded(silicaToAlumina, 6),
    expansion: expansions.map(({ model, perKelvin, doubt, outside }) => ({
      model,
      perKelvin,
      doubt,
      outside,
    })),
    costOfKilogram: isUnknown ? null : rounded(cost.known, 6),
    unpriced: cost.unpriced,
    typical,
  };
}

function describeUnity(wanted: OxideAmounts, reached: OxideAmounts) {
  return oxides
    .filter((oxide) => (wanted[oxide] ?? reached[oxide]) !== undefined)
    .map((oxide) => ({
      oxide,
      wanted: rounded(wanted[oxide] ?? 0, 6),
      reached: rounded(reached[oxide] ?? 0, 6),
    }));
}

function describeUnreached({ oxide, wanted, reached }: Unreached) {
  return { oxide, wanted: rounded(wanted, 6), reached: rounded(reached, 6) };
}

function describeCaution({ isLoud, ...caution }: Caution) {
  return { ...caution, loud: isLoud };
}

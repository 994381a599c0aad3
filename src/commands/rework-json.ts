/** The answer of `tilebook rework` as a program reads it. */
import type { Portion } from "../chemistry/recipe.ts";
import { findLargestDifference, type Unreached } from "../chemistry/rework.ts";
import type { ReworkedGlaze } from "../chemistry/rework-glaze.ts";
import { rounded } from "../publish/data/numbers.ts";
import { idKey } from "../terms/ids.ts";
import { type OxideAmounts, oxides } from "../terms/oxides.ts";
import type { ReworkQuestion } from "./rework-text.ts";

/** One JSON object; amounts to six decimals, `null` where there is nothing to say. */
export function renderReworkAsJson({ id, without }: ReworkQuestion, answer: ReworkedGlaze): string {
  const { wanted, rework, brought, cautions } = answer;
  const found = {
    glaze: id,
    without,
    portions: rework?.portions.map((portion) => describePortion(portion, answer)) ?? null,
    unity: describeUnity(wanted, rework?.unity ?? null),
    largestDifference: rework && describeDifference(wanted, rework.unity),
    unreached: rework?.unreached.map(describeUnreached) ?? null,
    brought: brought.map(({ oxide, material }) => ({ oxide, material })),
    cautions: cautions.map(({ isLoud, ...caution }) => ({ ...caution, loud: isLoud })),
  };
  return JSON.stringify(found, null, 2);
}

function describePortion({ material, parts }: Portion, { before }: ReworkedGlaze) {
  const was = before.find((portion) => idKey(portion.material) === idKey(material));
  return { material, parts: rounded(parts, 6), partsBefore: orNull(was?.parts) };
}

function describeUnity(wanted: OxideAmounts, reached: OxideAmounts | null) {
  return oxides
    .filter((oxide) => (wanted[oxide] ?? reached?.[oxide]) !== undefined)
    .map((oxide) => ({
      oxide,
      wanted: rounded(wanted[oxide] ?? 0, 6),
      reached: reached && rounded(reached[oxide] ?? 0, 6),
    }));
}

function describeDifference(wanted: OxideAmounts, reached: OxideAmounts) {
  const { oxide, difference } = findLargestDifference(wanted, reached);
  return { oxide, difference: rounded(difference, 6) };
}

function describeUnreached({ oxide, wanted, reached }: Unreached) {
  return { oxide, wanted: rounded(wanted, 6), reached: rounded(reached, 6) };
}

function orNull(value: number | undefined): number | null {
  return value === undefined ? null : rounded(value, 6);
}

/** What is added on top of a glaze, when the glaze is reworked: it stays as it was written. */
import { tellBrings } from "./brings.ts";
import { mostNamed, type OxideSource } from "./oxide-sources.ts";
import { sumOf, sumOfOxides } from "./oxide-sums.ts";
import type { Portion } from "./recipe.ts";
import type { Candidate, Share } from "./rework.ts";
import { rankAsSource } from "./studio-order.ts";
import { type Exchange, equivalentParts, findPurpose } from "./swap.ts";
import { weightsToMoles } from "./unity.ts";

export interface KeptAdditions {
  /** As they were written, without the one that is missing. */
  readonly kept: readonly Portion[];
  /** The missing material, where it was one of them. */
  readonly lost: Share | null;
  /** What would bring the same in its place; null where nothing does. */
  readonly instead: Exchange | null;
}

/** Of the moles that stay in the fire: what brings less of anything else brings one thing alone. */
const alone = 0.9;

/**
 * Additions without one material. Another may take its place, mole for mole, where it brings the
 * same and hardly anything else: cobalt carbonate for cobalt oxide.
 *
 * @param written per 100 of the ingredients
 * @param candidates what could take its place, the preferred first
 */
export function keepAdditions(
  written: readonly Share[],
  without: string,
  candidates: readonly Candidate[],
): KeptAdditions {
  const kept = written
    .filter(({ material }) => material !== without)
    .map(({ material, parts }) => ({ material, parts }));
  const lost = written.find(({ material }) => material === without) ?? null;
  return { kept, lost, instead: lost && findInstead(lost, candidates) };
}

/** What could be bought to take the place of a missing addition. */
export function findAdditionSources(
  out: Share,
  candidates: readonly Candidate[],
): readonly OxideSource[] {
  const [oxide] = findPurpose(out, [out]) ?? [];
  if (oxide === undefined) return [];
  return candidates
    .filter((candidate) => findInstead(out, [candidate]) !== null)
    .sort((a, b) => rankAsSource(oxide, a.material) - rankAsSource(oxide, b.material))
    .slice(0, mostNamed)
    .map(({ material, analysis }) => ({
      oxide,
      material,
      why: tellBrings(analysis, oxide),
      distance: 0,
    }));
}

function findInstead(out: Share, candidates: readonly Candidate[]): Exchange | null {
  const of = findPurpose(out, [out]);
  if (!of) return null;
  for (const candidate of candidates) {
    const moles = weightsToMoles(candidate.analysis.oxides);
    if (sumOf(moles, of) < alone * sumOfOxides(moles)) continue;
    const parts = equivalentParts(out, of, candidate.analysis);
    if (parts !== undefined) return { out, into: { ...candidate, parts }, of };
  }
  return null;
}

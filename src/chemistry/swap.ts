/** One material for another, mole for mole of what it is in the recipe for. */
import { alkalis, type Oxide, type OxideAmounts, oxides } from "../terms/oxides.ts";
import type { Analysis } from "./analysis.ts";
import { sumOf, sumOfOxides } from "./oxide-sums.ts";
import { type Candidate, describeRework, type Rework, type Share } from "./rework.ts";
import { weightsToMoles } from "./unity.ts";

/** What went out and what came in. */
export interface Exchange {
  readonly out: Share;
  readonly into: Share;
  /** What the one brings as many moles of as the other did: one oxide, or the alkalis. */
  readonly of: readonly Oxide[];
}

export interface Swap extends Exchange {
  readonly rework: Rework;
}

/** A smaller share of a material's moles is not what it is bought for. */
const leastShare = 0.05;

/** What may stand in for each other mole for mole: alkalis together, every other oxide by itself. */
const kinds: readonly (readonly Oxide[])[] = [
  alkalis,
  ...oxides.filter((oxide) => !isAlkali(oxide)).map((oxide) => [oxide]),
];

function isAlkali(oxide: Oxide): boolean {
  return alkalis.some((alkali) => alkali === oxide);
}

/**
 * The nearest recipe in which one material takes the place of another and the rest stays as it is
 * written. It takes as much of it as brings equal moles of what the first was in the recipe for:
 * that of which it brought the largest share of the whole.
 *
 * Source: the equivalents of the unity formula, as in C. W. Parmelee, Ceramic Glazes (1948), from
 * memory.
 *
 * @param written the recipe with the material that goes out
 * @param candidates what could take its place, the preferred first
 * @returns undefined where none of them brings the same
 */
export function findNearestSwap(
  wanted: OxideAmounts,
  written: readonly Share[],
  without: string,
  candidates: readonly Candidate[],
): Swap | undefined {
  const out = written.find(({ material }) => material === without);
  const of = out && findPurpose(out, written);
  if (!out || !of) return undefined;
  const rest = written.filter((share) => share !== out);
  const swaps = candidates.flatMap((candidate) => swapOne(wanted, rest, { out, of }, candidate));
  return swaps.reduce<Swap | undefined>(
    (best, swap) => (best && best.rework.distance <= swap.rework.distance ? best : swap),
    undefined,
  );
}

function swapOne(
  wanted: OxideAmounts,
  rest: readonly Share[],
  { out, of }: Pick<Exchange, "of" | "out">,
  candidate: Candidate,
): readonly Swap[] {
  const parts = equivalentParts(out, of, candidate.analysis);
  if (parts === undefined) return [];
  const into = { ...candidate, parts };
  const same = rest.find(({ material }) => material === candidate.material);
  const merged = { ...into, parts: parts + (same?.parts ?? 0) };
  const rework = describeRework(wanted, [...rest.filter((share) => share !== same), merged]);
  return rework ? [{ out, into, of, rework }] : [];
}

/** Parts that bring as many moles of some oxides; undefined where it hardly brings any. */
export function equivalentParts(
  out: Share,
  of: readonly Oxide[],
  analysis: Analysis,
): number | undefined {
  const moles = weightsToMoles(analysis.oxides);
  if (sumOf(moles, of) < leastShare * sumOfOxides(moles)) return undefined;
  return (out.parts * sumOf(weightsToMoles(out.analysis.oxides), of)) / sumOf(moles, of);
}

/** What a material is in a recipe for; of two things, that of which it holds more moles. */
export function findPurpose(
  { analysis, parts }: Share,
  recipe: readonly Share[],
): readonly Oxide[] | undefined {
  const moles = weightsToMoles(analysis.oxides);
  const shareOf = (kind: readonly Oxide[]) => {
    const all = recipe.reduce(
      (sum, share) => sum + share.parts * sumOf(weightsToMoles(share.analysis.oxides), kind),
      0,
    );
    return (parts * sumOf(moles, kind)) / all;
  };
  return kinds
    .filter(
      (kind) => sumOf(moles, kind) >= leastShare * sumOfOxides(moles) && sumOf(moles, kind) > 0,
    )
    .map((kind) => ({ kind, share: Number(shareOf(kind).toFixed(9)), most: sumOf(moles, kind) }))
    .sort((a, b) => b.share - a.share || b.most - a.most)[0]?.kind;
}

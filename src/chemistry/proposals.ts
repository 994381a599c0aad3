/** Several ways to do without a material, from the nearest to the simplest. */
import type { OxideAmounts } from "../terms/oxides.ts";
import { findNearestWithOne, findNearestWithTwo } from "./coming-in.ts";
import { type Candidate, findNearestRecipe, partsIn, type Rework, type Share } from "./rework.ts";
import { asNear } from "./rework-distance.ts";
import { type Exchange, findNearestSwap } from "./swap.ts";

/**
 * `swap`: one material takes the place of another and the rest stays as written; `rest`: the rest
 * of the recipe is weighed anew; `one`, `two`: the same with so many materials that come in;
 * `named`: with as many as were asked for by name.
 */
export type ProposalKind = "named" | "one" | "rest" | "swap" | "two";

export interface Proposal {
  readonly kind: ProposalKind;
  readonly rework: Rework;
  /** Of a swap: what went out and what came in. */
  readonly exchange: Exchange | null;
  /** Ids of the materials that the recipe never held. */
  readonly comingIn: readonly string[];
}

/** What a recipe is to be made from. */
export interface Shelf {
  /** The recipe as it is written, each material once. */
  readonly written: readonly Share[];
  /** The material of it to do without. */
  readonly without: string;
  /** What may come in, the preferred first. */
  readonly others: readonly Candidate[];
  /** Whether `others` were asked for by name, so that all of them may come in together. */
  readonly isNamed: boolean;
}

/** Farther than a mole to one of flux it is another glaze. Common practice, no source. */
const anotherGlaze = 1;

/**
 * Proposals, the nearest first. One that needs more, of materials or of weighing, is given only
 * where it comes nearer than all that are simpler; one that makes another glaze of it, only where
 * there is no other.
 *
 * @param wanted the unity formula of the recipe as it is written
 */
export function findProposals(wanted: OxideAmounts, shelf: Shelf): readonly Proposal[] {
  const worthwhile: Proposal[] = [];
  for (const proposal of fromTheSimplest(wanted, shelf)) {
    const isNearer = worthwhile.every(
      (simpler) => proposal.rework.distance < simpler.rework.distance - asNear,
    );
    if (isNearer) worthwhile.push(proposal);
  }
  const [nearest, ...others] = worthwhile.reverse();
  if (!nearest) return [];
  return [nearest, ...others.filter(({ rework }) => rework.distance <= anotherGlaze)];
}

/** Fewer materials that come in are simpler; of as many, a swap is. */
function fromTheSimplest(wanted: OxideAmounts, shelf: Shelf): readonly Proposal[] {
  const { written, without, others, isNamed } = shelf;
  const held = written.filter(({ material }) => material !== without);
  const swap = findNearestSwap(wanted, written, without, [...held, ...others]);
  const rest = findNearestRecipe(wanted, held);
  const one = findNearestWithOne(wanted, held, others);
  const simpler = [swap?.rework, rest, one].flatMap((rework) => rework?.distance ?? []);
  const nearerThan = Math.min(...simpler) - asNear;
  const made: readonly (readonly [ProposalKind, Rework | undefined])[] = [
    ["swap", swap?.rework],
    ["rest", rest],
    ["one", one],
    ["two", findNearestWithTwo(wanted, held, others, nearerThan)],
    ["named", isNamed ? findNearestRecipe(wanted, [...held, ...others]) : undefined],
  ];
  const proposals = made.flatMap(([kind, rework]): readonly Proposal[] => {
    if (!rework) return [];
    const comingIn = others.map((it) => it.material).filter((id) => partsIn(rework, id) > 0);
    return [{ kind, rework, exchange: kind === "swap" ? (swap ?? null) : null, comingIn }];
  });
  return proposals.sort((a, b) => a.comingIn.length - b.comingIn.length);
}

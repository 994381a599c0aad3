/** Does the story of a firing hold? Aim, programme, log and witness cones side by side. */
import { accountsOf, type Contradiction, type StoryInput } from "./accounts.ts";
import { type Comparison, compareAccounts } from "./comparisons.ts";
import { type LikelyReading, likelyReadings } from "./readings.ts";

export interface Story {
  /** "unknown" where there are no two accounts to compare. */
  readonly agreement: "agrees" | "differs" | "unknown";
  /** One sentence. */
  readonly words: string;
  readonly comparisons: readonly Comparison[];
  /** What may be behind a difference, the likeliest first; empty where the story holds. */
  readonly readings: readonly LikelyReading[];
  /** Shelves whose witness cones contradict themselves. */
  readonly contradictions: readonly Contradiction[];
}

/** Sets the accounts of a firing side by side. */
export function tellStory(input: StoryInput): Story {
  const accounts = accountsOf(input);
  const comparisons = compareAccounts(accounts);
  const off = comparisons.filter((comparison) => !comparison.agrees);
  const { contradictions } = accounts;
  if (off.length > 0)
    return {
      agreement: "differs",
      words: `The accounts of this firing do not agree. ${widest(off).words}.`,
      comparisons,
      readings: likelyReadings(accounts, comparisons),
      contradictions,
    };
  return comparisons.length > 0
    ? {
        agreement: "agrees",
        words: "What was aimed at, recorded and seen agrees within a cone.",
        comparisons,
        readings: [],
        contradictions,
      }
    : {
        agreement: "unknown",
        words: "There is nothing to compare: a firing needs two of aim, witness cones and log.",
        comparisons,
        readings: [],
        contradictions,
      };
}

function widest(comparisons: readonly Comparison[]): Comparison {
  return comparisons.reduce((most, one) =>
    Math.abs(one.cones) > Math.abs(most.cones) ? one : most,
  );
}

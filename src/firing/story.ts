/** Does the story of a firing hold? Aim, programme, log and witness cones side by side. */
import { type Accounts, accountsOf, type StoryInput } from "./accounts.ts";
import { type Comparison, compareAccounts } from "./comparisons.ts";
import { minutesInWords } from "./programme.ts";
import { type LikelyReading, likelyReadings } from "./readings.ts";

export interface Story {
  /** "unknown" where there are no two accounts to compare. */
  readonly agreement: "agrees" | "differs" | "unknown";
  /** One sentence. */
  readonly words: string;
  readonly comparisons: readonly Comparison[];
  /** Of those that do not agree, the one that lies furthest apart; null where the story holds. */
  readonly widest: Comparison | null;
  /** What may be behind a difference, the likeliest first; empty where the story holds. */
  readonly readings: readonly LikelyReading[];
  /** What each account says, and which shelves contradict themselves. */
  readonly accounts: Accounts;
}

/** Sets the accounts of a firing side by side. */
export function tellStory(input: StoryInput): Story {
  const accounts = accountsOf(input);
  const comparisons = compareAccounts(accounts);
  const off = comparisons.filter(({ agrees, open }) => !agrees && !open);
  const open = comparisons.filter((comparison) => comparison.open);
  const seen = comparisons.some(({ between, agrees }) => between === "aim-witness" && agrees);
  const widest = findWidest(off);
  if (widest)
    return {
      agreement: "differs",
      words: `The accounts of this firing do not agree. ${widest.words}.`,
      comparisons,
      widest,
      readings: likelyReadings(accounts, comparisons),
      accounts,
    };
  if (open.length > 0)
    return {
      agreement: seen ? "agrees" : "unknown",
      words: openWords(open, accounts),
      comparisons,
      widest: null,
      readings: [],
      accounts,
    };
  return comparisons.length > 0
    ? {
        agreement: "agrees",
        words: "What was aimed at, recorded and seen agrees within a cone.",
        comparisons,
        widest: null,
        readings: [],
        accounts,
      }
    : {
        agreement: "unknown",
        words: "There is nothing to compare: a firing needs two of aim, witness cones and log.",
        comparisons,
        widest: null,
        readings: [],
        accounts,
      };
}

/** What a hold leaves open, as a sentence. */
function openWords(open: readonly Comparison[], { log, schedule }: Accounts): string {
  const minutes = Math.max(log?.hold?.minutes ?? 0, schedule?.hold?.minutes ?? 0);
  return `${open[0]?.words}. How much the hold of ${minutesInWords(minutes)} counts for is not known well enough to say whether they agree: the witness cones decide.`;
}

function findWidest(comparisons: readonly Comparison[]): Comparison | null {
  return comparisons.reduce<Comparison | null>(
    (most, one) => (most && Math.abs(most.cones) >= Math.abs(one.cones) ? most : one),
    null,
  );
}

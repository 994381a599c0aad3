/** Does the story of a firing hold? Aim, programme, log and witness cones side by side. */
import { type Accounts, accountsOf, type StoryInput } from "./accounts.ts";
import { type Comparison, compareAccounts } from "./comparisons.ts";
import { type LikelyReading, likelyReadings } from "./readings.ts";

export interface Story {
  /** "unknown" where there are no two accounts to compare, or a hold leaves open what they say. */
  readonly agreement: "agrees" | "differs" | "unknown";
  readonly comparisons: readonly Comparison[];
  /** Of those that do not agree, the one that lies furthest apart; null where the story holds. */
  readonly widest: Comparison | null;
  /** What a hold leaves open; null where nothing is, or where accounts differ. */
  readonly leftOpen: LeftOpen | null;
  /** What may be behind a difference, the likeliest first; empty where the story holds. */
  readonly readings: readonly LikelyReading[];
  /** What each account says, and which shelves contradict themselves. */
  readonly accounts: Accounts;
}

/** Two accounts that may agree or not: nobody knows well enough how much the hold counts for. */
export interface LeftOpen {
  readonly comparison: Comparison;
  /** The longest hold at the peak, of log and programme. */
  readonly minutes: number;
}

/** Sets the accounts of a firing side by side. */
export function tellStory(input: StoryInput): Story {
  const accounts = accountsOf(input);
  const comparisons = compareAccounts(accounts);
  const widest = findWidest(comparisons.filter(({ agrees, open }) => !agrees && !open));
  const leftOpen = widest ? null : findLeftOpen(comparisons, accounts);
  return {
    agreement: widest ? "differs" : agreementOf(comparisons, leftOpen),
    comparisons,
    widest,
    leftOpen,
    readings: widest ? likelyReadings(accounts, comparisons) : [],
    accounts,
  };
}

/** Where a hold leaves something open, witness cones that met the aim settle it. */
function agreementOf(
  comparisons: readonly Comparison[],
  leftOpen: LeftOpen | null,
): Story["agreement"] {
  const settles = ({ between, agrees }: Comparison) => between === "aim-witness" && agrees;
  const holds = leftOpen ? comparisons.some(settles) : comparisons.length > 0;
  return holds ? "agrees" : "unknown";
}

function findLeftOpen(
  comparisons: readonly Comparison[],
  { log, schedule }: Accounts,
): LeftOpen | null {
  const comparison = comparisons.find(({ open }) => open);
  const minutes = Math.max(log?.hold?.minutes ?? 0, schedule?.hold?.minutes ?? 0);
  return comparison ? { comparison, minutes } : null;
}

function findWidest(comparisons: readonly Comparison[]): Comparison | null {
  return comparisons.reduce<Comparison | null>(
    (most, one) => (most && Math.abs(most.cones) >= Math.abs(one.cones) ? most : one),
    null,
  );
}

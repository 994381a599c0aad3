/** What the accounts of a firing say beside one another. */

import type { Account, Contradiction } from "../../firing/accounts.ts";
import type { Comparison } from "../../firing/comparisons.ts";
import type { HeatReached } from "../../firing/heat.ts";
import type { LikelyReading } from "../../firing/readings.ts";
import type { LeftOpen, Story } from "../../firing/story.ts";
import { compareShelves } from "./shelves.ts";

/** "unknown" where there are no two accounts to compare. */
export type Agreement = "agrees" | "differs" | "unknown";

export interface FiringStory {
  readonly agreement: Agreement;
  /** In the order in which they are told: aim, programme, log, then the shelves from the top. */
  readonly accounts: readonly FiringAccount[];
  /** What may be behind a difference, the likeliest first. */
  readonly readings: readonly LikelyReading[];
  /** What a hold leaves open; null where nothing is, or where accounts differ. */
  readonly leftOpen: LeftOpen | null;
  /** Every two accounts that do not agree, the furthest apart first; empty where the story holds. */
  readonly differences: readonly Comparison[];
  /** Shelves whose witness cones contradict themselves, with what a check says of them. */
  readonly contradictions: readonly Pick<Contradiction, "message" | "shelf">[];
}

/** What one account says, as a stretch of the line of cones. */
export interface FiringAccount {
  readonly of: "aim" | "programme" | "log" | "shelf";
  /** The shelf's name, of a shelf. */
  readonly shelf: string | null;
  /** Places on the line of cones: 1 at 0, 01 at −1. Infinite where that end is open. */
  readonly low: number;
  readonly high: number;
  /** Of a log or a programme: the place that the model alone gives, within its range. */
  readonly modelled: number | null;
  /** Of a log or a programme: what it works out at. */
  readonly reached: HeatReached | null;
}

export function storyFor({
  agreement,
  leftOpen,
  accounts,
  readings,
  comparisons,
}: Story): FiringStory {
  const apart = comparisons.filter(({ agrees, open }) => !agrees && !open);
  return {
    agreement,
    accounts: accountsInOrder(accounts),
    readings,
    leftOpen,
    differences: apart.toSorted((a, b) => Math.abs(b.cones) - Math.abs(a.cones)),
    contradictions: accounts.contradictions.map(({ shelf, message }) => ({ shelf, message })),
  };
}

function accountsInOrder(accounts: Story["accounts"]): readonly FiringAccount[] {
  const { aim, schedule, log, shelves } = accounts;
  const told = [
    { of: "aim", account: aim },
    { of: "programme", account: schedule },
    { of: "log", account: log },
  ] as const;
  return [
    ...told.flatMap(({ of, account }) =>
      account ? [{ of, shelf: null, ...stretchOf(account) }] : [],
    ),
    ...shelves
      .toSorted((a, b) => compareShelves(a.shelf, b.shelf))
      .map((account) => ({ of: "shelf" as const, shelf: account.shelf, ...stretchOf(account) })),
  ];
}

function stretchOf({ low, high, reached, hold }: Account) {
  return { low, high, reached: reached ?? null, modelled: hold?.place ?? null };
}

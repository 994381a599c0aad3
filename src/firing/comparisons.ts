/** The accounts of a firing, two by two. */
import { type Account, type Accounts, conesBetween, type ShelfAccount } from "./accounts.ts";

/** Two accounts of one firing, and how far they lie apart. */
export interface Comparison {
  readonly between:
    | "aim-log"
    | "aim-schedule"
    | "aim-witness"
    | "log-witness"
    | "schedule-log"
    | "shelves";
  /** How many cones hotter the second is; of shelves, how far they lie apart. */
  readonly cones: number;
  readonly agrees: boolean;
  /**
   * True where a hold leaves it open: the range of what it may have done meets the other account,
   * though the model alone does not. Then there is no verdict, and `agrees` is false.
   */
  readonly open: boolean;
  readonly words: string;
}

/** Accounts agree within so many cones. Those of logs and programmes hold their own doubt. */
const within = 1;

/** Every comparison that the accounts allow. */
export function compareAccounts(accounts: Accounts): readonly Comparison[] {
  const { aim, schedule, log, witness, shelves } = accounts;
  const far = aim && furthestFrom(aim, shelves);
  const aimed = `Aimed at ${aim?.words}`;
  return [
    compare("aim-witness", aim, far, `${aimed}; the witness cones show ${far?.words}`),
    compare("aim-log", aim, log, `${aimed}; the log works out at ${log?.words}`),
    compare(
      "aim-schedule",
      aim,
      schedule,
      `${aimed}; the programme works out at ${schedule?.words}`,
    ),
    compare(
      "log-witness",
      log,
      witness,
      `The log works out at ${log?.words}; the witness cones show ${witness?.words}`,
    ),
    compare(
      "schedule-log",
      schedule,
      log,
      `The programme works out at ${schedule?.words}; the log at ${log?.words}`,
    ),
    compareShelves(shelves),
  ].flat();
}

function compare(
  between: Comparison["between"],
  first: Account | undefined,
  second: Account | undefined,
  words: string,
): readonly Comparison[] {
  if (!first || !second) return [];
  const cones = conesBetween(first, second);
  const meets = Math.abs(cones) <= within;
  const open = meets && leavesOpen(first, second);
  return [{ between, cones, agrees: meets && !open, open, words }];
}

/** Whether two accounts meet only by what a hold may have done, and not by the model. */
function leavesOpen(...accounts: readonly [Account, Account]): boolean {
  const [first, second] = accounts.map((account) => account.hold?.modelled ?? account);
  if (!first || !second || !accounts.some(({ hold }) => hold?.leavesOpen)) return false;
  return Math.abs(conesBetween(first, second)) > within;
}

/** The shelf that lies furthest from what was aimed at, with its name in its words. */
function furthestFrom(aim: Account, shelves: readonly ShelfAccount[]): Account | undefined {
  const far = (shelf: Account) => Math.abs(conesBetween(aim, shelf));
  let furthest = shelves[0];
  for (const shelf of shelves) if (furthest && far(shelf) > far(furthest)) furthest = shelf;
  return furthest && { ...furthest, words: `${furthest.words} (${furthest.shelf})` };
}

function compareShelves(shelves: readonly ShelfAccount[]): readonly Comparison[] {
  let [coolest, hottest] = [shelves[0], shelves[0]];
  for (const shelf of shelves) {
    if (coolest && shelf.high < coolest.high) coolest = shelf;
    if (hottest && shelf.low > hottest.low) hottest = shelf;
  }
  if (!coolest || !hottest || shelves.length < 2) return [];
  const cones = Math.max(0, hottest.low - coolest.high);
  const words =
    cones > 0
      ? `The hottest shelf (${hottest.shelf}) shows ${hottest.words}, the coolest (${coolest.shelf}) ${coolest.words}`
      : "All shelves read alike";
  return [{ between: "shelves", cones, agrees: cones <= within, open: false, words }];
}

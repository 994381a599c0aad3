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
  /** In the order of their names in `between`; of shelves, the hottest and the coolest. */
  readonly accounts: readonly [Account | ShelfAccount, Account | ShelfAccount];
}

/** Accounts agree within so many cones. Those of logs and programmes hold their own doubt. */
const within = 1;

/** Every comparison that the accounts allow. */
export function compareAccounts(accounts: Accounts): readonly Comparison[] {
  const { aim, schedule, log, witness, shelves } = accounts;
  const far = aim && furthestFrom(aim, shelves);
  return [
    compare("aim-witness", aim, far),
    compare("aim-log", aim, log),
    compare("aim-schedule", aim, schedule),
    compare("log-witness", log, witness),
    compare("schedule-log", schedule, log),
    compareShelves(shelves),
  ].flat();
}

function compare(
  between: Comparison["between"],
  first: Account | undefined,
  second: Account | undefined,
): readonly Comparison[] {
  if (!first || !second) return [];
  const cones = conesBetween(first, second);
  const meets = Math.abs(cones) <= within;
  const open = meets && leavesOpen(first, second);
  return [{ between, cones, agrees: meets && !open, open, accounts: [first, second] }];
}

/** Whether two accounts meet only by what a hold may have done, and not by the model. */
function leavesOpen(...accounts: readonly [Account, Account]): boolean {
  const [first, second] = accounts.map((account) => account.hold?.modelled ?? account);
  if (!first || !second || !accounts.some(({ hold }) => hold?.leavesOpen)) return false;
  return Math.abs(conesBetween(first, second)) > within;
}

/** The shelf that lies furthest from what was aimed at. */
function furthestFrom(aim: Account, shelves: readonly ShelfAccount[]) {
  const far = (shelf: Account) => Math.abs(conesBetween(aim, shelf));
  let furthest = shelves[0];
  for (const shelf of shelves) if (furthest && far(shelf) > far(furthest)) furthest = shelf;
  return furthest;
}

function compareShelves(shelves: readonly ShelfAccount[]): readonly Comparison[] {
  let [coolest, hottest] = [shelves[0], shelves[0]];
  for (const shelf of shelves) {
    if (coolest && shelf.high < coolest.high) coolest = shelf;
    if (hottest && shelf.low > hottest.low) hottest = shelf;
  }
  if (!coolest || !hottest || shelves.length < 2) return [];
  const cones = Math.max(0, hottest.low - coolest.high);
  const accounts = [hottest, coolest] as const;
  return [{ between: "shelves", cones, agrees: cones <= within, open: false, accounts }];
}

/** The accounts of a firing, two by two. */
import { type Account, type Accounts, conesBetween, type ShelfAccount } from "./accounts.ts";
import { heatWorkError } from "./heat.ts";

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
  readonly words: string;
}

/** Accounts agree within a cone; where one is reckoned, the model's error comes on top. */
const [withinRead, withinReckoned] = [1, 1 + heatWorkError.cones];

/** Every comparison that the accounts allow. */
export function compareAccounts(accounts: Accounts): readonly Comparison[] {
  const { aim, schedule, log, witness, shelves } = accounts;
  const far = aim && furthestFrom(aim, shelves);
  const aimed = `Aimed at ${aim?.words}`;
  return [
    compare("aim-witness", aim, far, `${aimed}; the witness cones show ${far?.words}`),
    compare("aim-log", aim, log, `${aimed}; the log amounts to ${log?.words}`),
    compare("aim-schedule", aim, schedule, `${aimed}; the programme amounts to ${schedule?.words}`),
    compare(
      "log-witness",
      log,
      witness,
      `The log amounts to ${log?.words}; the witness cones show ${witness?.words}`,
    ),
    compare(
      "schedule-log",
      schedule,
      log,
      `The programme amounts to ${schedule?.words}; the log to ${log?.words}`,
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
  const within = between === "aim-witness" ? withinRead : withinReckoned;
  return [{ between, cones, agrees: Math.abs(cones) <= within, words }];
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
      : "The shelves show the same";
  return [{ between: "shelves", cones, agrees: cones <= withinRead, words }];
}

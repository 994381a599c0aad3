/** What may be behind a firing whose accounts do not agree. */
import { type Account, type Accounts, conesBetween } from "./accounts.ts";
import type { Comparison } from "./comparisons.ts";

/** One thing that may be behind a difference, with the accounts that speak for it. */
export type LikelyReading =
  | { readonly code: "adds-up" | "cones-misread" | "uneven" }
  | {
      readonly code: "double-fired" | "double-written" | "wrong-log";
      readonly aim: Account;
      /** 06 where 6 was aimed at, 6 where 06 was. */
      readonly double: Account;
    }
  | {
      readonly code: "long-hold";
      /** The log or programme that would meet the aim without its hold. */
      readonly account: Account;
      readonly minutes: number;
    }
  | {
      readonly code: "programme-not-followed";
      /** Whether the kiln fell short of its programme, or went beyond it. */
      readonly way: "beyond" | "short";
    }
  | {
      readonly code: "thermocouple-drifted";
      /** Whether it shows less than there is, or more. */
      readonly reads: "high" | "low";
    }
  | {
      readonly code: "wrong-programme";
      readonly aim: Account;
      /** Absent where none was written down. */
      readonly schedule?: Account;
      /** Where none was written down: whether the kiln got hotter than was aimed at. */
      readonly isHotter?: boolean;
    };

interface Evidence {
  readonly accounts: Accounts;
  /** By how many cones a pair disagrees; undefined where it agrees or cannot be compared. */
  readonly off: (between: Comparison["between"]) => number | undefined;
  /** By how many cones every shelf missed the aim; undefined where one of them met it. */
  readonly missed: number | undefined;
}

type Reader = (evidence: Evidence) => LikelyReading | undefined;

/**
 * What may be behind the differences, the likeliest first. A cone taken for its double explains
 * everything at once, and is told alone.
 */
export function likelyReadings(
  accounts: Accounts,
  comparisons: readonly Comparison[],
): readonly LikelyReading[] {
  const off = (between: Comparison["between"]) =>
    comparisons.find((one) => one.between === between && !one.agrees && !one.open)?.cones;
  const double = findDoubleTaken(accounts);
  if (double) return [double];
  const missed = meetsAim(accounts) ? undefined : off("aim-witness");
  const found = readers.flatMap((reader) => reader({ accounts, off, missed }) ?? []);
  return found.length > 0 ? found : [addsUp];
}

/** Whether any shelf came within a cone of the aim. */
function meetsAim({ aim, witness }: Accounts): boolean {
  return aim !== undefined && witness !== undefined && Math.abs(conesBetween(aim, witness)) <= 1;
}

/** How far, in cones, an account may lie from the double and still be taken for it. */
const nearDouble = 1.5;

function findDoubleTaken(accounts: Accounts): LikelyReading | undefined {
  const { aim, double, log, schedule, witness } = accounts;
  if (!aim || !double) return undefined;
  const near = (account: Account | undefined) =>
    account !== undefined &&
    Math.abs(conesBetween(double, account)) <= nearDouble &&
    Math.abs(conesBetween(aim, account)) > nearDouble;
  const asAimed = witness && Math.abs(conesBetween(aim, witness)) <= nearDouble;
  const heat = log ?? schedule;
  if (near(heat) && asAimed) return { code: "wrong-log", aim, double };
  if (near(heat) && (near(witness) || !witness)) return { code: "double-fired", aim, double };
  if (near(heat) || !near(witness)) return undefined;
  return { code: heat ? "double-written" : "double-fired", aim, double };
}

const findUneven: Reader = ({ off }) =>
  off("shelves") === undefined ? undefined : { code: "uneven" };

const findDrift: Reader = ({ accounts, off, missed }) => {
  const byLog = off("log-witness");
  const unlogged = accounts.log === undefined && off("aim-schedule") === undefined;
  const byAim = unlogged ? missed : undefined;
  const cones = byLog ?? byAim;
  if (cones === undefined) return undefined;
  return { code: "thermocouple-drifted", reads: cones > 0 ? "low" : "high" };
};

const findNotFollowed: Reader = ({ accounts, off, missed }) => {
  const cones = off("schedule-log");
  const unlogged = !accounts.log && accounts.schedule && off("aim-schedule") === undefined;
  const short = cones === undefined ? unlogged && (missed ?? 0) < 0 : cones < 0;
  if (cones === undefined && !short) return undefined;
  return { code: "programme-not-followed", way: short ? "short" : "beyond" };
};

/** A programme or log that would meet the aim but for how long it was held. */
const findLongHold: Reader = ({ accounts, off }) => {
  const account = findOverheld(accounts, off);
  if (!account?.hold) return undefined;
  return { code: "long-hold", account, minutes: account.hold.minutes };
};

function findOverheld({ aim, log, schedule }: Accounts, off: Evidence["off"]) {
  const meets = (account: Account | undefined) =>
    aim !== undefined &&
    account?.hold?.leavesOpen &&
    Math.abs(conesBetween(aim, account.hold.unheld)) <= 1;
  if ((off("aim-schedule") ?? 0) > 0 && meets(schedule)) return schedule;
  return (off("aim-log") ?? 0) > 0 && meets(log) ? log : undefined;
}

const findWrongProgramme: Reader = ({ accounts, off, missed }) => {
  const { aim, schedule } = accounts;
  if (!aim || findOverheld(accounts, off)) return undefined;
  if (schedule && off("aim-schedule") !== undefined)
    return { code: "wrong-programme", aim, schedule };
  const cones = off("aim-log") ?? missed;
  if (schedule || cones === undefined || off("log-witness") !== undefined) return undefined;
  return { code: "wrong-programme", aim, isHotter: cones > 0 };
};

const findMisread: Reader = ({ accounts, off }) => {
  const byAim = accounts.log ? undefined : off("aim-witness");
  if ((off("log-witness") ?? byAim) === undefined) return undefined;
  return { code: "cones-misread" };
};

/** Each account lies within a cone of the next, and it adds up. */
const addsUp: LikelyReading = { code: "adds-up" };

const readers: readonly Reader[] = [
  findUneven,
  findDrift,
  findNotFollowed,
  findLongHold,
  findWrongProgramme,
  findMisread,
];

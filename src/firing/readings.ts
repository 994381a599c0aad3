/** What may be behind a firing whose accounts do not agree. */
import { type Account, type Accounts, conesBetween } from "./accounts.ts";
import type { Comparison } from "./comparisons.ts";
import { minutesInWords } from "./programme.ts";

export interface LikelyReading {
  readonly code:
    | "adds-up"
    | "cones-misread"
    | "double-fired"
    | "double-written"
    | "long-hold"
    | "programme-not-followed"
    | "thermocouple-drifted"
    | "uneven"
    | "wrong-log"
    | "wrong-programme";
  readonly words: string;
}

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

function findDoubleTaken({ aim, double, log, schedule, witness }: Accounts) {
  if (!aim || !double) return undefined;
  const near = (account: Account | undefined) =>
    account !== undefined &&
    Math.abs(conesBetween(double, account)) <= nearDouble &&
    Math.abs(conesBetween(aim, account)) > nearDouble;
  const asAimed = witness && Math.abs(conesBetween(aim, witness)) <= nearDouble;
  const heat = log ?? schedule;
  if (near(heat) && asAimed) return wrongLog(aim, double);
  if (near(heat) && (near(witness) || !witness)) return doubleFired(aim, double);
  if (near(heat) || !near(witness)) return undefined;
  return heat ? doubleWritten(aim, double) : doubleFired(aim, double);
}

function doubleFired(aim: Account, double: Account): LikelyReading {
  return {
    code: "double-fired",
    words: `The kiln was fired to ${double.words} where ${aim.words} was meant, or one was written for the other. Look at the programme first.`,
  };
}

function doubleWritten(aim: Account, double: Account): LikelyReading {
  return {
    code: "double-written",
    words: `The witness cones were written down as ${double.words} where ${aim.words} was seen: the kiln itself was fired as meant.`,
  };
}

function wrongLog(aim: Account, double: Account): LikelyReading {
  return {
    code: "wrong-log",
    words: `The log or programme belongs to another firing: it is one for ${double.words}, while the witness cones show ${aim.words}.`,
  };
}

const findUneven: Reader = ({ off }) =>
  off("shelves") === undefined
    ? undefined
    : {
        code: "uneven",
        words:
          "The kiln fired unevenly. Look at how the load was stacked, at the elements or burners, and at where the thermocouple sits.",
      };

const findDrift: Reader = ({ accounts, off, missed }) => {
  const byLog = off("log-witness");
  const unlogged = accounts.log === undefined && off("aim-schedule") === undefined;
  const byAim = unlogged ? missed : undefined;
  const cones = byLog ?? byAim;
  if (cones === undefined) return undefined;
  const words =
    cones > 0
      ? "A thermocouple that has drifted: it reads low, so the kiln got hotter than it says."
      : "A thermocouple that has drifted: it reads high, so the kiln stayed cooler than it says.";
  return {
    code: "thermocouple-drifted",
    words: `${words} Compare it with a fresh one, and trust the cones until then.`,
  };
};

const findNotFollowed: Reader = ({ accounts, off, missed }) => {
  const cones = off("schedule-log");
  const unlogged = !accounts.log && accounts.schedule && off("aim-schedule") === undefined;
  const short = cones === undefined ? unlogged && (missed ?? 0) < 0 : cones < 0;
  if (cones === undefined && !short) return undefined;
  return {
    code: "programme-not-followed",
    words: short
      ? "The kiln fell short of its programme: a power cut, worn elements, too little gas, or a firing that was stopped early."
      : "The kiln went beyond its programme: a relay that stuck, or heat that was added by hand.",
  };
};

/** A programme or log that would meet the aim but for how long it was held. */
const findLongHold: Reader = ({ accounts, off }) => {
  const told = findOverheld(accounts, off);
  if (!told?.hold) return undefined;
  const { hold, words } = told;
  return {
    code: "long-hold",
    words: `The hold: without it the climb would be right. Held ${minutesInWords(hold.minutes)}, it works out at ${words}. Shorten the hold, or lower the peak, and let witness cones settle it.`,
  };
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
    return {
      code: "wrong-programme",
      words: `A wrong programme: it works out at ${schedule.words}, not to ${aim.words}.`,
    };
  const cones = off("aim-log") ?? missed;
  if (schedule || cones === undefined || off("log-witness") !== undefined) return undefined;
  return {
    code: "wrong-programme",
    words: `A wrong programme, or one that was ${cones > 0 ? "left to run too long" : "stopped early"}: what happened is not ${aim.words}.`,
  };
};

const findMisread: Reader = ({ accounts, off }) => {
  const byAim = accounts.log ? undefined : off("aim-witness");
  if ((off("log-witness") ?? byAim) === undefined) return undefined;
  return {
    code: "cones-misread",
    words:
      "The witness cones were misread, or mixed up when they were set: look at the pack again, and at the numbers pressed into it.",
  };
};

const addsUp: LikelyReading = {
  code: "adds-up",
  words:
    "Nothing stands out: each account lies within a cone of the next, and it adds up. The kiln runs a little hot or cool for this aim.",
};

const readers: readonly Reader[] = [
  findUneven,
  findDrift,
  findNotFollowed,
  findLongHold,
  findWrongProgramme,
  findMisread,
];

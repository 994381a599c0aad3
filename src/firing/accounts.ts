/** Everything that is said of one firing, as stretches of the line of cones. */
import { type Cone, parseCone } from "../terms/cones.ts";
import { type Heat, type HeatReached, heatReached, isOpenByHold } from "./heat.ts";
import { placeOfCone } from "./place.ts";
import { readWitness, type Stretch, type Witness } from "./witness.ts";

/** What is known of a firing. */
export interface StoryInput {
  readonly aim?: Cone | undefined;
  /** By shelf. */
  readonly witness?: Readonly<Record<string, Witness>> | undefined;
  readonly schedule?: Heat | undefined;
  readonly log?: Heat | undefined;
}

export interface Account extends Stretch {
  /** Of a log or a programme: what it works out at. */
  readonly reached?: HeatReached;
  /** Of a log or a programme: what its hold has to do with it. */
  readonly hold?: HoldInAccount;
}

/** How far a hold decides what a log or a programme works out at. */
export interface HoldInAccount {
  /** Minutes at the peak, within 10 °C below it. */
  readonly minutes: number;
  /** Whether it leaves the cone open by more than is told anyway. */
  readonly leavesOpen: boolean;
  /** What the model alone says; null where that is cooler than every cone. */
  readonly place: number | null;
  /** The same, the chart's doubt around it. */
  readonly modelled: Stretch;
  /** What the climb works out at without any hold. */
  readonly unheld: Stretch;
}

export interface ShelfAccount extends Account {
  readonly shelf: string;
}

/** A shelf whose cones contradict themselves. */
export interface Contradiction {
  readonly shelf: string;
  readonly message: string;
  readonly hint: string;
}

export interface Accounts {
  readonly aim: Account | undefined;
  /** 06 where 6 was aimed at, 6 where 06 was, if the two lie far apart. */
  readonly double: Account | undefined;
  readonly schedule: Account | undefined;
  readonly log: Account | undefined;
  readonly shelves: readonly ShelfAccount[];
  /** From the coolest shelf to the hottest. */
  readonly witness: Account | undefined;
  readonly contradictions: readonly Contradiction[];
}

export function accountsOf({ aim, witness, schedule, log }: StoryInput): Accounts {
  const { shelves, contradictions } = readShelves(witness ?? {});
  const double = aim && findDouble(aim);
  return {
    aim: aim && accountOfCone(aim),
    double: double && accountOfCone(double),
    schedule: schedule && accountOfHeat(schedule),
    log: log && accountOfHeat(log),
    shelves,
    witness: hullOf(shelves),
    contradictions,
  };
}

/** How many cones hotter the second lies than the first; 0 where they overlap. */
export function conesBetween(first: Stretch, second: Stretch): number {
  if (second.low > first.high) return second.low - first.high;
  return second.high < first.low ? second.high - first.low : 0;
}

function readShelves(witness: Readonly<Record<string, Witness>>) {
  const shelves: ShelfAccount[] = [];
  const contradictions: Contradiction[] = [];
  for (const [shelf, said] of Object.entries(witness)) {
    const reading = readWitness(said);
    if (reading.ok) {
      const { low, high } = reading;
      shelves.push({ shelf, low, high });
    } else contradictions.push({ shelf, message: reading.message, hint: reading.hint });
  }
  return { shelves, contradictions };
}

function accountOfCone(cone: Cone): Account {
  const place = placeOfCone(cone);
  return { low: place, high: place };
}

/** Where part of the climb has no known time, the heat may have been more. */
function accountOfHeat(heat: Heat): Account {
  const { place, equivalentCone, range, hold } = heat;
  const coolest = equivalentCone.next ? placeOfCone(equivalentCone.next) : 0;
  const { low, high } = place === null ? { low: range.low, high: coolest } : range;
  return {
    low,
    high,
    reached: heatReached(heat),
    hold: {
      minutes: hold,
      place,
      leavesOpen: isOpenByHold(heat),
      modelled: range.modelled,
      unheld: range.unheld,
    },
  };
}

function hullOf(shelves: readonly ShelfAccount[]): Account | undefined {
  if (shelves.length === 0) return undefined;
  const low = Math.min(...shelves.map((shelf) => shelf.low));
  const high = Math.max(...shelves.map((shelf) => shelf.high));
  return { low, high };
}

/** How far apart, in cones, a cone and its double must lie for one to show as the other. */
const farApart = 3;

function findDouble(aim: Cone): Cone | undefined {
  const reading = parseCone(aim.startsWith("0") ? aim.slice(1) : `0${aim}`, "any");
  if (!reading.ok) return undefined;
  const apart = Math.abs(placeOfCone(reading.cone) - placeOfCone(aim));
  return apart > farApart ? reading.cone : undefined;
}

/** What the witness cones of a shelf say. */
import type { FiringRecord } from "../records/firing.ts";
import type { Cone } from "../terms/cones.ts";
import { findConeAt, placeOfCone } from "./place.ts";

/** How far a cone had bent, from untouched to flat. */
export type Bend = "standing" | "bending" | "bent" | "down";

/** The cone that was reached, or how far each cone of the pack had bent. */
export type Witness =
  | { readonly read: "cone"; readonly cone: Cone }
  | { readonly read: "bends"; readonly bends: ReadonlyMap<Cone, Bend> };

/** A stretch of the line of cones; `low` and `high` are the same where one place is meant. */
export interface Stretch {
  readonly low: number;
  readonly high: number;
}

export type WitnessReading =
  | ({ readonly ok: true } & Stretch)
  | { readonly ok: false; readonly message: string; readonly hint: string };

/**
 * Where on the line of cones a shelf got to.
 *
 * The rule for bends, a pack read as a whole:
 * - a cone that is **bent** (its tip level with its foot) has just been reached;
 * - one that is **bending** has half a cone to go;
 * - one that is **down** (flat) was passed by half a cone or more;
 * - one that is **standing** was missed by half a cone or more.
 *
 * So `5: down, 6: bent, 7: standing` is cone 6; `5: down, 6: standing` and `5: down, 6: bending`
 * are 5½; `6: down` alone is hotter than 6 by half a cone or more, with no end. Two neighbours
 * that are both bent lie halfway between. A cone that has bent further than a cooler one of the
 * pack is a contradiction. Common practice, but for the bent cone: its position is the end point
 * of the published chart.
 */
export function readWitness(witness: Witness): WitnessReading {
  if (witness.read === "cone") {
    const place = placeOfCone(witness.cone);
    return { ok: true, low: place, high: place };
  }
  const pack = [...witness.bends].sort(([a], [b]) => placeOfCone(a) - placeOfCone(b));
  return findContradiction(pack) ?? readPack(pack);
}

/** The whole or half cone nearest to what a shelf's witness says; undefined where it is open. */
export function findWitnessCone(witness: Witness): Cone | undefined {
  if (witness.read === "cone") return witness.cone;
  const reading = readWitness(witness);
  if (!reading.ok || !Number.isFinite(reading.low + reading.high)) return undefined;
  return findConeAt(Math.round(reading.low + reading.high) / 2);
}

/** The cone at a shelf: what its witness cone showed, else what was aimed at. */
export function coneAtShelf(record: FiringRecord, shelf: string | null): Cone | undefined {
  const witness = shelf === null ? undefined : record.witness?.[shelf];
  return (witness && findWitnessCone(witness)) ?? record.cone;
}

type Pack = readonly (readonly [Cone, Bend])[];

const furthest: Readonly<Record<Bend, number>> = { standing: 0, bending: 1, bent: 2, down: 3 };

function findContradiction(pack: Pack): WitnessReading | undefined {
  const at = pack.findIndex(([, bend], i) => {
    const cooler = pack[i - 1];
    return cooler !== undefined && furthest[bend] > furthest[cooler[1]];
  });
  const [hotter, cooler] = [pack[at], pack[at - 1]];
  if (!hotter || !cooler) return undefined;
  return {
    ok: false,
    message: `Cone ${hotter[0]} is ${hotter[1]} while cone ${cooler[0]}, the cooler of the two, is ${cooler[1]}: that cannot be.`,
    hint: "Look at the pack again: two cones may have changed places, or 06 been taken for 6.",
  };
}

function readPack(pack: Pack): WitnessReading {
  let [low, high] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const [cone, bend] of pack) {
    const said = saidBy(placeOfCone(cone), bend);
    low = Math.max(low, said.low);
    high = Math.min(high, said.high);
  }
  const middle = (low + high) / 2;
  const stretch = low > high ? { low: middle, high: middle } : { low, high };
  return { ok: true, ...stretch };
}

function saidBy(place: number, bend: Bend): Stretch {
  switch (bend) {
    case "standing":
      return { low: Number.NEGATIVE_INFINITY, high: place - 0.5 };
    case "bending":
      return { low: place - 0.5, high: place - 0.5 };
    case "bent":
      return { low: place, high: place };
    case "down":
      return { low: place + 0.5, high: Number.POSITIVE_INFINITY };
  }
}

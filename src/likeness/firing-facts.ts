/** What of a firing makes tiles alike or unlike. Firings compare by these, never by their ids. */
import { type Cooling, coolingOf } from "../firing/cooling.ts";
import { type FiringHeat, scheduleOf } from "../firing/of-record.ts";
import { coneAtShelf } from "../firing/witness.ts";
import { type Archive, type FiredStep, findById } from "../records/archive.ts";
import type { Atmosphere, HeatSource } from "../terms/choices.ts";
import type { Cone } from "../terms/cones.ts";
import { idKey } from "../terms/ids.ts";

export interface FiringFacts {
  /** As the tile's own shelf showed it; the aim where no cone was read there. */
  readonly cone: Cone | null;
  readonly atmosphere: Atmosphere | null;
  /** What the fire puts on a glaze: salt, soda, wood, a pit's or a saggar's ash, or nothing. */
  readonly fire: string | null;
  readonly cooling: Cooling;
}

const nothingKnown: FiringFacts = { cone: null, atmosphere: null, fire: null, cooling: "unknown" };

/** Heat sources that leave something on a glaze. Common practice, no source. */
const leavesSomething: readonly HeatSource[] = ["pit", "saggar", "salt", "soda", "wood"];

/**
 * Makes the function that tells what is known of the firing a step had.
 *
 * @param heats what every firing's programme and log come to, by `idKey`
 */
export function firingFactsOf(
  { firings }: Archive,
  heats: ReadonlyMap<string, FiringHeat>,
): (step: FiredStep) => FiringFacts {
  const coolings = new Map(
    [...firings].map(([key, { record }]) => [
      key,
      coolingOf(scheduleOf(record), heats.get(key)?.log?.curve),
    ]),
  );
  return ({ firing, shelf }) => {
    const record = findById(firings, firing)?.record;
    if (!record || firing === null) return nothingKnown;
    const { heatedBy, atmosphere = null } = record;
    return {
      cone: coneAtShelf(record, shelf) ?? null,
      atmosphere,
      fire: heatedBy ? (leavesSomething.includes(heatedBy) ? heatedBy : "clean") : null,
      cooling: coolings.get(idKey(firing)) ?? "unknown",
    };
  };
}

/** How hot a firing was, as far as its record tells. */
import { findWitnessCone } from "../firing/witness.ts";
import type { FiringRecord, Witness } from "../records/firing.ts";
import { type Cone, compareCones, findHottest } from "../terms/cones.ts";
import { rememberFor } from "../terms/remember.ts";

export interface FiringCone {
  readonly cone: Cone;
  /** Whether it was aimed at, or is the hottest that the witness cones showed. */
  readonly told: "aim" | "witness";
}

/**
 * The cone that a firing is judged by: what was aimed at, or the hottest witness of any shelf
 * where that is hotter. Undefined where neither was written down.
 */
export const findFiringCone = rememberFor((firing: FiringRecord): FiringCone | undefined => {
  const witnessed = findHottest(Object.values(firing.witness ?? {}).flatMap(conesReached));
  const aim = firing.cone;
  if (witnessed && (!aim || compareCones(witnessed, aim) > 0))
    return { cone: witnessed, told: "witness" };
  return aim && { cone: aim, told: "aim" };
});

/**
 * What a shelf's pack says as a whole. Where it leaves that open, a cone is reached when it has
 * bent; where none has, one that was bending is the nearest there is, and counts: a kiln that
 * began to bend cone 6 was no cone 06.
 */
function conesReached(witness: Witness): readonly Cone[] {
  const reached = findWitnessCone(witness);
  if (reached || witness.read === "cone") return reached ? [reached] : [];
  const cones = [...witness.bends.keys()];
  const bent = cones.filter((cone) => ["bent", "down"].includes(witness.bends.get(cone) ?? ""));
  return bent.length > 0 ? bent : cones.filter((cone) => witness.bends.get(cone) === "bending");
}

/** The place of a cone among all cones, for programs that cannot sort their names. */
import { type Cone, chartedCones, conesHotter } from "../../../terms/cones.ts";

/**
 * From cool to hot: 022 is 1, 01 is 22, 1 is 23, 6 is 28, 5½ is 27.5. It begins at 1 and not at a
 * cone's own number, so that nobody takes it for the name of a cone.
 *
 * @returns null without a cone
 */
export function coneOrder(cone: Cone | null): number | null {
  const coolest = chartedCones[0];
  return cone === null || coolest === undefined ? null : conesHotter(cone, coolest) + 1;
}

/** Steps as the layer drawing takes them. */
import type { TileStep } from "../../../src/records/archive.ts";
import type { DrawnStep } from "../../../templates/drawing/layer-view.ts";
import { cone } from "../../checks/support.ts";

/** Gives the firings among the steps these cones, in their order; those that are left get none. */
export function withCones(
  steps: readonly TileStep[],
  cones: readonly string[] = [],
): readonly DrawnStep[] {
  const left = cones.map(cone);
  return steps.map((step) =>
    step.step === "fired" ? { ...step, cone: left.shift() ?? null } : step,
  );
}

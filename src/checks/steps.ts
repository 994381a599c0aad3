/** What the steps of a coat stack say about one another. */
import type { CoatStep, FiredStep, TileStep } from "../records/archive.ts";
import { stepsThatLast } from "../records/coat-stack.ts";
import { idKey } from "../terms/ids.ts";

/** Whether a step is the firing of that id. */
export function isFiring(step: TileStep, id: string): step is FiredStep {
  return step.step === "fired" && step.firing !== null && idKey(step.firing) === idKey(id);
}

/** Whether a step is a firing that a result may describe: any but a bisque. */
export function isGlazeFiring(step: TileStep): step is FiredStep {
  return step.step === "fired" && step.kind !== "bisque";
}

/** The layers of glaze that lie on a tile after some steps, touch-ups among them. */
export function coatsOn(steps: readonly TileStep[]): readonly CoatStep[] {
  return stepsThatLast(steps).filter((step) => step.step === "coat");
}

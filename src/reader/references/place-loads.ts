/** Puts the firings of the load lists into a tile's steps. */
import type { FiredStep, TileStep } from "../../records/archive.ts";
import type { Problem } from "../../records/problem.ts";
import { idKey } from "../../terms/ids.ts";
import { problemOfFile } from "../problem-of-file.ts";
import type { Loading } from "./firings.ts";
import type { Followed } from "./look-up.ts";

/**
 * A load that the tile names itself only adds its shelf. Any other takes the place of the first
 * `fired:` of its kind that names no firing or, where there is none, comes after the last layer.
 *
 * @param file the tile's file
 * @param loadings the loads the tile was in, in the order of their days
 */
export function placeLoads(
  file: string,
  steps: readonly TileStep[],
  loadings: readonly Loading[],
): Followed<readonly TileStep[]> {
  let value = steps;
  const problems: Problem[] = [];
  for (const loading of loadings) {
    const index = findPlace(value, loading);
    const step = value[index];
    if (step?.step !== "fired") value = [...value, afterLastLayer(loading)];
    else {
      problems.push(...faultsOfShelf(file, step, loading));
      value = value.with(index, {
        ...step,
        firing: loading.firing.id,
        shelf: step.shelf ?? loading.shelf,
      });
    }
  }
  return { value, problems };
}

function findPlace(steps: readonly TileStep[], { firing }: Loading): number {
  const named = steps.findIndex(
    (step) =>
      step.step === "fired" && step.firing !== null && idKey(step.firing) === idKey(firing.id),
  );
  if (named >= 0) return named;
  return steps.findIndex(
    (step) => step.step === "fired" && step.firing === null && step.kind === firing.record.kind,
  );
}

function afterLastLayer({ firing, shelf }: Loading): FiredStep {
  return { step: "fired", at: null, kind: firing.record.kind, firing: firing.id, shelf };
}

function faultsOfShelf(file: string, step: FiredStep, loading: Loading): Problem[] {
  if (step.at === null || step.shelf === null || idKey(step.shelf) === idKey(loading.shelf))
    return [];
  const fault = {
    code: "shelf-differs",
    message: `The tile says it stood at “${step.shelf}”, and the load list of “${loading.firing.id}” says “${loading.shelf}”`,
    hint: "Correct the one that is wrong, or leave the shelf to the load list.",
  };
  return [problemOfFile(file, fault, ["layers", step.at, "shelf"], "warning")];
}

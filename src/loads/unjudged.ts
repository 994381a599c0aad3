/**
 * What no check can judge of a tile in a load, since something about it is not written down: silence
 * about it would pass for a good word.
 */

import { listed } from "../../templates/words/english/numbers.ts";
import { findClayRange } from "../checks/clay-range.ts";
import { coatsOn } from "../checks/steps.ts";
import { type Archive, type Firing, findById, type Tile } from "../records/archive.ts";
import type { GlazeRecord } from "../records/glaze.ts";
import { idKey } from "../terms/ids.ts";
import { type Caution, warning } from "./caution.ts";

/** Of a firing without a cone there is one caution for the whole load: see `coneUnknown`. */
export function unjudged(archive: Archive, tile: Tile, { record, id }: Firing): readonly Caution[] {
  if (record.cone === undefined) return [];
  return [
    ...clayUnknown(archive, tile, `cone ${record.cone}`),
    ...glazesUnknown(archive, tile, id, `cone ${record.cone}`),
  ];
}

/** Nothing in a load without a cone was held against any cone. */
export function coneUnknown({ record }: Firing): readonly Caution[] {
  if (record.cone !== undefined) return [];
  return [
    warning(
      "cone-unknown",
      "No cone is written for this firing, so no clay and no glaze was checked against it",
      "Write down the cone you aim at.",
    ),
  ];
}

function clayUnknown(archive: Archive, tile: Tile, cone: string): readonly Caution[] {
  const clay = findById(archive.clays, tile.clay);
  if (!clay)
    return [
      warning(
        "clay-unknown",
        `Nobody wrote down the clay of ${tile.id}, so nothing tells whether it can take ${cone}`,
        "Find out before it goes in: low-fire clay melts over the shelf. Then write “clay:” into its record.",
      ),
    ];
  if (findClayRange(archive, clay)) return [];
  return [
    warning(
      "clay-without-cones",
      `${clay.record.name} has no cones in its record, so nothing tells whether ${tile.id} can take ${cone}`,
      `Look at the bag or ask the supplier, and write “cones:” into ${clay.file}.`,
    ),
  ];
}

/** The glazes that lie on it when it goes into this firing. */
function glazesUnknown(
  archive: Archive,
  tile: Tile,
  firing: string,
  cone: string,
): readonly Caution[] {
  const names = glazesAt(archive, tile, firing).filter(({ cones }) => cones === undefined);
  if (names.length === 0) return [];
  const those = listed(names.map(({ name }) => name));
  return [
    warning(
      "glaze-without-cones",
      `${those} ${names.length === 1 ? "has no cones in its record" : "have no cones in their records"}, so nothing tells whether ${names.length === 1 ? "it is" : "they are"} for ${cone}`,
      "Look at the label, and write “cones:” into the glaze’s record.",
    ),
  ];
}

/** The glazes that lie on a tile when it goes into a firing. */
export function glazesAt(archive: Archive, tile: Tile, firing: string): readonly GlazeRecord[] {
  const at = tile.steps.findIndex(
    (step) => step.step === "fired" && step.firing !== null && idKey(step.firing) === idKey(firing),
  );
  return glazesOn(archive, at < 0 ? tile.steps : tile.steps.slice(0, at));
}

/** The records of the glazes that lie on a tile after some steps, each once, the lowest first. */
export function glazesOn(archive: Archive, steps: Tile["steps"]): readonly GlazeRecord[] {
  const coats = coatsOn(steps);
  const ids = new Map(coats.flatMap(({ glazes }) => glazes.map((id) => [idKey(id), id] as const)));
  return [...ids.values()].flatMap((id) => findById(archive.glazes, id)?.record ?? []);
}

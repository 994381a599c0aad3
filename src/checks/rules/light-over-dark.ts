import { findById } from "../../records/archive.ts";
import { findLaps, type Lap } from "../../records/coat-stack.ts";
import { idKey } from "../../terms/ids.ts";
import { commonPractice, type Finding, type TileRule } from "../check.ts";
import { glazePath } from "../places.ts";

export const lightOverDark: TileRule = {
  of: "tile",
  name: "light-over-dark",
  severity: "warning",
  source: commonPractice,
  explains: "A light glaze that covers lies over a dark one; clear glazes are exempt.",
  find: (archive, tile) =>
    pairsOnce(findLaps(tile.steps)).flatMap(({ over, under, upper }): Finding[] => {
      const light = findById(archive.glazes, over)?.record;
      const dark = findById(archive.glazes, under)?.record;
      const covers = light?.cover === "opaque" || light?.cover === "milky";
      if (!covers || light?.tone !== "light" || dark?.tone !== "dark") return [];
      return [
        {
          path: glazePath(upper, over),
          message: `${light.name}, light and ${light.cover}, lies over ${dark.name}, which is dark`,
          hint: "The dark one often bleeds through and muddies the light one; try them the other way round, dark over light.",
        },
      ];
    }),
};

/** Each pair of glazes where it first occurs. */
function pairsOnce(laps: readonly Lap[]): readonly Lap[] {
  const keys = laps.map(({ over, under }) => `${idKey(over)}\n${idKey(under)}`);
  return laps.filter((_, i) => keys.indexOf(keys[i] ?? "") === i);
}

import { type Archive, findById, type Tile } from "../../records/archive.ts";
import { findLaps, type Lap } from "../../records/coat-stack.ts";
import { idKey } from "../../terms/ids.ts";
import { commonPractice, type Finding, type TileRule } from "../check.ts";
import { glazePath } from "../places.ts";
import { isRefuted, tilesWithPair, verdictOf } from "../verdicts.ts";

/** What a light glaze loses where a dark one bleeds through. */
const warned = ["cloudy", "colour-lost"] as const;

export const lightOverDark: TileRule = {
  of: "tile",
  name: "light-over-dark",
  severity: "warning",
  source: commonPractice,
  explains:
    "A light glaze that covers is over a dark one, and no tile with the two came out well; clear glazes are exempt.",
  find: (archive, tile) =>
    pairsOnce(findLaps(tile.steps)).flatMap((lap): Finding[] => {
      const { over, under, upper } = lap;
      const light = findById(archive.glazes, over)?.record;
      const dark = findById(archive.glazes, under)?.record;
      const covers = light?.cover === "opaque" || light?.cover === "milky";
      if (!covers || light?.tone !== "light" || dark?.tone !== "dark") return [];
      if (isRefuted(archive, tile, warned, () => tilesWithPair(archive, over, under))) return [];
      const bleeds = "The dark one often bleeds through and muddies the light one";
      return [
        {
          path: glazePath(upper, over),
          message: `${light.name}, light and ${light.cover}, is over ${dark.name}, which is dark`,
          hint: mayTurn(archive, lap)
            ? `${bleeds}; try them the other way round, dark over light.`
            : `${bleeds}; try another glaze underneath.`,
        },
      ];
    }),
};

/**
 * Whether the other way round is worth a tile: not where that lays a glaze that runs on top, and
 * not where a tile has it and nobody would make it again.
 */
function mayTurn(archive: Archive, { over, under }: Lap): boolean {
  if (findById(archive.glazes, under)?.record.moves === "runs") return false;
  return !tilesWithPair(archive, under, over).some(isUnwanted);
}

function isUnwanted(tile: Tile): boolean {
  return tile.record.result?.at(-1)?.again === "no" || verdictOf(tile, warned) === "ill";
}

/** Each pair of glazes where it first occurs. */
function pairsOnce(laps: readonly Lap[]): readonly Lap[] {
  const keys = laps.map(({ over, under }) => `${idKey(over)}\n${idKey(under)}`);
  return laps.filter((_, i) => keys.indexOf(keys[i] ?? "") === i);
}

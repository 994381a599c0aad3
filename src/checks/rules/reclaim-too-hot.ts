import { commonPractice, type Finding, type TileRule } from "../check.ts";
import { isDangerous } from "../danger.ts";
import { findHeats, heatPath } from "../heat.ts";
import { outsideInWords } from "../heat-words.ts";

export const reclaimTooHot: TileRule = {
  of: "tile",
  name: "reclaim-too-hot",
  severity: "warning",
  source: commonPractice,
  explains:
    "Reclaimed clay was fired hotter than the range of the studio's lowest-firing clay, of which there may be some in it.",
  find: (archive, tile) =>
    findHeats(archive, tile)
      .filter((heat) => heat.outside > 0 && !isDangerous(heat) && heat.subject.countsAs !== null)
      .map(
        (heat): Finding => ({
          path: heatPath(heat),
          message: `The ${outsideInWords(heat)}`,
          hint: "Fire reclaimed clay no hotter than the lowest-firing clay in the studio, for some of it may be in there; stand it on something that may be lost.",
        }),
      ),
};

import { commonPractice, type Finding, type TileRule } from "../check.ts";
import { isDangerous } from "../danger.ts";
import { findTooHot, heatPath } from "../heat.ts";
import { outsideInWords } from "../heat-words.ts";
import { verdictOf } from "../verdicts.ts";

const warned = ["bloating", "dunting", "overfired", "warping"] as const;

export const reclaimTooHot: TileRule = {
  of: "tile",
  name: "reclaim-too-hot",
  severity: "warning",
  source: commonPractice,
  explains:
    "Reclaimed clay was fired hotter than the range of the studio's lowest-firing clay, of which there may be some in it.",
  find: (archive, tile) =>
    findTooHot(archive, tile)
      .filter((heat) => !isDangerous(heat) && heat.subject.countsAs !== null)
      // What is in reclaimed clay differs from bucket to bucket: no other tile speaks for this one.
      .filter(() => verdictOf(tile, warned) !== "well")
      .map(
        (heat): Finding => ({
          path: heatPath(heat),
          message: `The ${outsideInWords(heat)}`,
          hint: "Fire reclaimed clay no hotter than the lowest-firing clay in the studio, for some of it may be in there; stand it on something that may be lost.",
        }),
      ),
};

import type { Fault } from "../../terms/choices.ts";
import { commonPractice, type Finding, type TileRule } from "../check.ts";
import { isDangerous } from "../danger.ts";
import { findHeats, heatPath, type Subject } from "../heat.ts";
import { outsideInWords } from "../heat-words.ts";
import { isRefuted } from "../verdicts.ts";

/** What too much heat does to a glaze and to a clay. */
const warned = {
  glaze: ["blistering", "colour-lost", "overfired", "pinholing", "running"],
  clay: ["bloating", "dunting", "overfired", "warping"],
} as const satisfies Record<Subject["kind"], readonly Fault[]>;

export const hotterThanRange: TileRule = {
  of: "tile",
  name: "hotter-than-range",
  severity: "warning",
  source: commonPractice,
  explains:
    "A firing after a layer went on, bisque or other, was hotter than the range of that glaze or of the clay.",
  find: (archive, tile) =>
    findHeats(archive, tile)
      .filter((heat) => heat.outside > 0 && !isDangerous(heat) && heat.subject.countsAs === null)
      .filter(({ subject }) => !isRefuted(archive, tile, warned[subject.kind]))
      .map(
        (heat): Finding => ({
          path: heatPath(heat),
          message: `The ${outsideInWords(heat)}`,
          hint:
            heat.subject.kind === "glaze"
              ? "Watch for running, and for colours and textures that fire out; stand it on something that catches drips."
              : "Watch for slumping, bloating and sticking; stand it on something that may be lost.",
        }),
      ),
};

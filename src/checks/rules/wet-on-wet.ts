import { commonPractice, type Finding, type TileRule } from "../check.ts";
import { stepPath } from "../places.ts";
import { isRefuted } from "../verdicts.ts";

const warned = ["blistering", "crawling", "flaking"] as const;

export const wetOnWet: TileRule = {
  of: "tile",
  name: "wet-on-wet",
  severity: "warning",
  source: commonPractice,
  explains: "A layer went on while the layer beneath was still wet.",
  find: (archive, tile) =>
    tile.steps.flatMap((step): Finding[] =>
      step.step === "coat" && step.dried === "wet-on-wet" && !isRefuted(archive, tile, warned)
        ? [
            {
              path: stepPath(step, "dried"),
              message: "This layer went on while the one beneath was still wet",
              hint: "Wet layers drag, mix and can lift or crawl in the kiln; let each one dry to the touch first, unless that is what is being tried.",
            },
          ]
        : [],
    ),
};

import { commonPractice, type Finding, type TileRule } from "../check.ts";
import { findDangersPast } from "../danger.ts";
import { outsideInWords } from "../heat-words.ts";
import { stepPath } from "../places.ts";
import { verdictOf } from "../verdicts.ts";

export const firedFarOverRange: TileRule = {
  of: "tile",
  name: "fired-far-over-range",
  severity: "warning",
  source: commonPractice,
  explains:
    "A tile that was fired 60 °C or more over the range of its clay or a glaze is told with a loud caution.",
  find: (archive, tile) =>
    findDangersPast(archive, tile).map(
      (heat): Finding => ({
        path: stepPath(heat.step, "fired"),
        message: `${verdictOf(tile, []) === "well" ? "This one came through, another may not" : "Do not repeat this"}: the ${outsideInWords(heat)}. What is fired so far over its range can melt, run and bond to the shelf`,
        hint: "If a cone was mistyped, mend it in the record of the firing or of what was fired: 06 is far cooler than 6.",
      }),
    ),
};

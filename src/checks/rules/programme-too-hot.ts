import { comparisonWords } from "../../../templates/words/firing/accounts.ts";
import type { FiringRule } from "../check.ts";
import { degreesInWords } from "../heat-words.ts";
import { findTooHot } from "../kiln-story.ts";

export const programmeTooHot: FiringRule = {
  of: "firing",
  name: "programme-too-hot",
  severity: "error",
  explains:
    "The programme of a firing still to come climbs no 60 °C or more beyond the cone it is aimed at, its hold left out.",
  find: (_, firing, extra) => {
    const tooHot = findTooHot(extra, firing);
    if (!tooHot) return [];
    return [
      {
        path: ["schedule"],
        message: `${comparisonWords(tooHot.said)}: its climb alone is ${degreesInWords(tooHot.degrees)} too hot`,
        hint: "Clay and glaze for the cooler cone melt over the shelves: put the cone or the programme right before the kiln is lit.",
      },
    ];
  },
};

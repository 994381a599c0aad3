import type { FiringRule } from "../check.ts";
import { degreesInWords } from "../heat-words.ts";
import { findTooHot, storyOf } from "../kiln-story.ts";

export const programmeTooHot: FiringRule = {
  of: "firing",
  name: "programme-too-hot",
  severity: "error",
  explains:
    "The programme of a firing still to come climbs no 60 °C or more beyond the cone it is aimed at, its hold left out.",
  find: (_, firing, extra) => {
    const degrees = findTooHot(extra, firing);
    if (degrees === undefined) return [];
    const said = storyOf(extra, firing)?.comparisons.find((one) => one.between === "aim-schedule");
    return [
      {
        path: ["schedule"],
        message: `${said?.words}: its climb alone is ${degreesInWords(degrees)} too hot`,
        hint: "Clay and glaze for the cooler cone melt over the shelves: put the cone or the programme right before the kiln is lit.",
      },
    ];
  },
};

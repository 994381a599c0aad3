import type { FiringRule } from "../check.ts";
import { coneSteps } from "../heat-words.ts";
import { findTooHot, storyOf } from "../kiln-story.ts";

export const programmeTooHot: FiringRule = {
  of: "firing",
  name: "programme-too-hot",
  severity: "error",
  explains:
    "The programme of a firing still to come is not several cones hotter than the cone it is aimed at.",
  find: (_, firing, extra) => {
    const cones = findTooHot(extra, firing);
    if (cones === undefined) return [];
    const said = storyOf(extra, firing)?.comparisons.find((one) => one.between === "aim-schedule");
    return [
      {
        path: ["schedule"],
        message: `${said?.words}: ${coneSteps(Math.round(cones * 2) / 2)} hotter`,
        hint: "Clay and glaze for the cooler cone melt over the shelves: put the cone or the programme right before the kiln is lit.",
      },
    ];
  },
};

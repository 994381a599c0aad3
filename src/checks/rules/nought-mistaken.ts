import type { FiringRule } from "../check.ts";
import { withoutFullStop } from "../full-stop.ts";
import { findDoubleReading, findTooHot, storyOf } from "../kiln-story.ts";

export const noughtMistaken: FiringRule = {
  of: "firing",
  name: "nought-mistaken",
  severity: "warning",
  explains:
    "A cone is not taken for its double, 06 for 6 or 6 for 06: what was aimed at, programmed, recorded and seen tells.",
  find: (_, firing, extra) => {
    const story = storyOf(extra, firing);
    const reading = story && findDoubleReading(story);
    if (!reading || findTooHot(extra, firing) !== undefined) return [];
    return [
      {
        path: ["cone"],
        message: withoutFullStop(story.words),
        hint: `${reading.words} If it is told as it happened, leave it: that is history.`,
      },
    ];
  },
};

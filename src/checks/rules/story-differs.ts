import type { FiringRule } from "../check.ts";
import { withoutFullStop } from "../full-stop.ts";
import { findDoubleReading, findTooHot, placeOfDifference, storyOf } from "../kiln-story.ts";

export const storyDiffers: FiringRule = {
  of: "firing",
  name: "story-differs",
  severity: "warning",
  explains:
    "What a firing was aimed at, programmed, recorded and seen to do agrees within a cone; else the likeliest readings are told.",
  find: (_, firing, extra) => {
    const story = storyOf(extra, firing);
    if (story?.agreement !== "differs") return [];
    if (findDoubleReading(story) || findTooHot(extra, firing) !== undefined) return [];
    const readings = story.readings.map(({ words }) => words);
    return [
      {
        path: placeOfDifference(story),
        message: withoutFullStop(story.words),
        hint: `${readings.length > 1 ? "The likeliest first" : "Likely"}: ${readings.join(" Or: ")}`,
      },
    ];
  },
};

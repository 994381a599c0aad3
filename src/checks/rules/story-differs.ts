import { readingWords } from "../../../templates/words/firing/accounts.ts";
import type { FiringRule } from "../check.ts";
import {
  disagreementOf,
  findDoubleReading,
  findTooHot,
  placeOfDifference,
  storyOf,
} from "../kiln-story.ts";

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
    const readings = story.readings.map(readingWords);
    return [
      {
        path: placeOfDifference(story),
        message: disagreementOf(story),
        hint: `${readings.length > 1 ? "The likeliest first" : "Likely"}: ${readings.join(" Or: ")}`,
      },
    ];
  },
};

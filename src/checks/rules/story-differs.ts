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
    "Aim, programme, log and witness cones of a firing agree to within a cone; where they do not, what may be behind it is told, the likeliest first.",
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

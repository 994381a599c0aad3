import { readingWords } from "../../../templates/words/firing/accounts.ts";
import type { FiringRule } from "../check.ts";
import { disagreementOf, findDoubleReading, findTooHot, storyOf } from "../kiln-story.ts";

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
        message: disagreementOf(story),
        hint: `${readingWords(reading)} If it is told as it happened, leave it: that is history.`,
      },
    ];
  },
};

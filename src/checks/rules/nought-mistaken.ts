import { readingWords } from "../../../templates/words/firing/accounts.ts";
import type { FiringRule } from "../check.ts";
import { disagreementOf, findDoubleReading, findTooHot, storyOf } from "../kiln-story.ts";

export const noughtMistaken: FiringRule = {
  of: "firing",
  name: "nought-mistaken",
  severity: "warning",
  explains:
    "A cone is not taken for its double, 06 for 6 or 6 for 06: aim, programme, log and witness cones show it.",
  find: (_, firing, extra) => {
    const story = storyOf(extra, firing);
    const reading = story && findDoubleReading(story);
    if (!reading || findTooHot(extra, firing) !== undefined) return [];
    return [
      {
        path: ["cone"],
        message: disagreementOf(story),
        hint: `${readingWords(reading)} If that is how it happened, leave it: that is history.`,
      },
    ];
  },
};

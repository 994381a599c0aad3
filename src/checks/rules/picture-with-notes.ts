import type { ArchiveRule } from "../check.ts";
import { tracesIn } from "../picture-traces.ts";

/** In the order in which they are told. */
const words: readonly (readonly [trace: string, words: string])[] = [
  ["owner", "a name"],
  ["device", "the camera or phone"],
  ["serial", "a serial number"],
];

export const pictureWithNotes: ArchiveRule = {
  of: "archive",
  name: "picture-with-notes",
  severity: "warning",
  explains: "A photograph in the archive holds the picture and nothing else.",
  find: (_, { pictures, asTyped }) => {
    const found = [...pictures].filter(([, picture]) => isNoted(tracesIn(picture)));
    const [first] = found;
    if (!first) return [];
    const counts = words.flatMap(([trace, word]) => {
      const count = found.filter(([, picture]) => tracesIn(picture).includes(trace)).length;
      return count > 0 ? [`${word} in ${count}`] : [];
    });
    const told = counts.length > 0 ? ` (${counts.join(", ")})` : "";
    return [
      {
        file: first[0],
        path: [],
        message: `${subject(found.length)} more than the picture${told}: words, dates, small copies, or data that cannot be read and may hide a name or a place`,
        hint: `Run “${asTyped("scrub", [])}”: it takes all that out and leaves the pictures as they are.`,
      },
    ];
  },
};

/** One with a place is an error already, and the same command mends it. */
function isNoted(traces: readonly string[]): boolean {
  return traces.length > 0 && !traces.includes("place");
}

function subject(count: number): string {
  return count === 1 ? "This photograph carries" : `${count} photographs, this one first, carry`;
}

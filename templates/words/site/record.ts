/** What the foot of a record says of its file. */
import type { RecordStory } from "../../../src/catalogue/history/entries.ts";
import type { RecordFacts } from "../../../src/catalogue/record-facts.ts";
import { count, formatDay, listed } from "../english/numbers.ts";

/** When a record changed; null where nobody knows. */
export function changedSentence({ state, first, last }: RecordDates): string | null {
  if (state === "new") return "This record is not committed yet.";
  if (state === "changed") return "This record has changes that are not committed yet.";
  if (first === null || last === null) return null;
  if (first === last)
    return `This record was written on ${formatDay(first)} and has not changed since.`;
  return `This record last changed on ${formatDay(last)}. It was first written on ${formatDay(first)}.`;
}

/** `Written down by Rowan K., among others.`; null where nobody may be named, or it is other than committed. */
export function writtenBySentence({ by, state }: RecordDates): string | null {
  if (by === null || state !== "as-committed") return null;
  return `Written down by ${listed(by.names).replace(/\.$/u, "")}${by.others ? ", among others" : ""}.`;
}

export type RecordDates = Pick<RecordFacts, "by" | "first" | "last" | "state">;

/** What the ways from a record's page to its file are called. */
export const recordWays = {
  edit: "Edit this page",
  commits: "What changed, when",
  report: "Something is wrong here",
} as const;

/** The title that a report of something wrong begins with. */
export function reportTitle(about: string): string {
  return `Something is wrong with ${about}`;
}

/** What a record said when, as its page lays it out. */
export interface RecordStoryWords {
  readonly title: string;
  /** What its days mean. */
  readonly lede: string;
  /** How many earlier days are left out; empty where none is. */
  readonly earlier: string;
  /** The oldest day first: `20 October 2026`, `fired in g-1020.` */
  readonly lines: readonly { readonly day: string; readonly words: string }[];
}

/** The days of a story, each as one line. */
export function storyWords<Change>(
  { entries, earlier }: RecordStory<Change>,
  wordsOf: (change: Change) => string,
): Pick<RecordStoryWords, "earlier" | "lines"> {
  return {
    earlier: earlier === 0 ? "" : `${count(earlier, "earlier day")} of changes are not told here.`,
    lines: entries.map(({ day, changes, more }) => {
      const told = changes.map(wordsOf);
      if (more > 0) told.push(`and ${count(more, "more change")}`);
      return { day: formatDay(day), words: `${[...new Set(told)].join("; ")}.` };
    }),
  };
}

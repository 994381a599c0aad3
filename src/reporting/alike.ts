/** Faults that many files share: told once, with every place that is not told in full. */
import type { LocatedProblem } from "../reader/locate.ts";

/** A problem, and the others that say the same of other places, in their order. */
export interface Told {
  readonly problem: LocatedProblem;
  readonly alike: readonly LocatedProblem[];
}

/** So many places of one fault are told one by one: two are soon read. */
const fewest = 3;

/** Gathers problems that say the same; those of fewer than three places stay by themselves. */
export function gatherAlike(problems: readonly LocatedProblem[]): readonly Told[] {
  const groups = groupBy(problems, wordsOf);
  return problems.flatMap((problem): Told[] => {
    const group = groups.get(wordsOf(problem)) ?? [];
    if (group.length < fewest) return [{ problem, alike: [] }];
    return group[0] === problem ? [{ problem, alike: group.slice(1) }] : [];
  });
}

/** Gathers problems that say the same of one file, two of them too. */
export function gatherAlikeInFile(problems: readonly LocatedProblem[]): readonly Told[] {
  const groups = groupBy(problems, (problem) => JSON.stringify([problem.file, wordsOf(problem)]));
  return [...groups.values()].flatMap(([problem, ...alike]) =>
    problem ? [{ problem, alike }] : [],
  );
}

function groupBy(
  problems: readonly LocatedProblem[],
  keyOf: (problem: LocatedProblem) => string,
): ReadonlyMap<string, readonly LocatedProblem[]> {
  const groups = new Map<string, LocatedProblem[]>();
  for (const problem of problems) {
    const key = keyOf(problem);
    const group = groups.get(key);
    if (group) group.push(problem);
    else groups.set(key, [problem]);
  }
  return groups;
}

/** What is said, whichever record it is said of; what one command mends is one thing to say. */
function wordsOf(problem: LocatedProblem): string {
  const { severity, code, message, hint, mend } = problem;
  if (mend) return JSON.stringify([severity, code, mend.does]);
  return JSON.stringify([
    severity,
    code,
    ...[message, hint].map((text) => nameless(text, problem)),
  ]);
}

/** A text without the record's own id and file where they are words of it: not in quotation marks. */
function nameless(text: string, { file }: LocatedProblem): string {
  const name = file.slice(file.lastIndexOf("/") + 1);
  const id = name.replace(/\.[^.]*$/u, "");
  return [file, name, id].filter(Boolean).reduce(withoutWord, text);
}

function withoutWord(text: string, word: string): string {
  return text.split(word).reduce((before, after) => {
    const isWord = /(?:^|[\s/])$/u.test(before) && /^(?:[\s.,:;/]|$)/u.test(after);
    return `${before}${isWord ? "\0" : word}${after}`;
  });
}

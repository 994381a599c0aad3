/** Codes as a load list writes them: runs of codes as ranges, and what was written left as it was. */
import { findCodes, idKey } from "../terms/ids.ts";
import { longestRange } from "../terms/limits.ts";

/** A range says no more than two codes do, and reads no easier. */
const shortestRange = 3;

/** `A-1, A-2, A-3, B-7` as `A-1..A-3`, `B-7`: three and more that follow each other are a range. */
export function entriesOf(codes: readonly string[]): readonly string[] {
  return runsOf(codes).flatMap((run) => {
    const [first, last] = [run[0], run.at(-1)];
    if (run.length < shortestRange || first === undefined || last === undefined) return run;
    return [`${first}..${last}`];
  });
}

/** Codes in runs of which each follows the one before it. */
function runsOf(codes: readonly string[]): readonly (readonly string[])[] {
  const runs: string[][] = [];
  for (const code of codes) {
    const run = runs.at(-1);
    const last = run?.at(-1);
    if (run && last !== undefined && run.length < longestRange && follows(last, code))
      run.push(code);
    else runs.push([code]);
  }
  return runs;
}

function follows(code: string, next: string): boolean {
  const [, second, ...more] = findCodes(`${code}..${next}`) ?? [];
  return second === next && more.length === 0;
}

/**
 * What is to stand in the place of each entry that is written, so that the list names these codes and
 * no others: an entry none of whose codes goes stays as it is, and what is new comes behind the last.
 *
 * @param written the entries of one shelf, ranges among them
 * @param codes those that are to stand there, in their order
 */
export function changedEntries(
  written: readonly string[],
  codes: readonly string[],
): readonly (string | readonly string[])[] {
  const wanted = new Set(codes.map(idKey));
  const before = written.map((entry) => findCodes(entry) ?? []);
  const known = new Set(before.flat().map(idKey));
  const added = codes.filter((code) => !known.has(idKey(code)));
  return written.map((entry, at) => {
    const [all, isLast] = [before[at] ?? [], at === written.length - 1];
    const stay = all.filter((code) => wanted.has(idKey(code)));
    const comes = isLast ? added : [];
    if (stay.length === all.length && comes.length === 0) return entry;
    const parts = entriesOf([...stay, ...comes]);
    // An entry that only gains what does not follow it is left as its author typed it.
    const isKept =
      stay.length === all.length &&
      entriesOf(stay).length + entriesOf(comes).length === parts.length;
    const now = isKept ? [entry, ...entriesOf(comes)] : parts;
    return now.length === 1 ? (now[0] ?? "") : now;
  });
}

/** Practice notes for the pages of the records they are about. */
import type { Problem } from "../records/problem.ts";
import { addTo } from "../terms/index-by.ts";
import { rules } from "./all.ts";

const practice = new Set(
  rules.filter(({ source }) => source !== undefined).map(({ name }) => name),
);

/**
 * The practice notes among some problems, by the record's file: what its page shows. They speak of
 * that record, its clay, glazes and firings alone, never of another tile, a set or a maker.
 */
export function notesByFile(problems: readonly Problem[]): ReadonlyMap<string, readonly Problem[]> {
  const notes = new Map<string, Problem[]>();
  for (const problem of problems.filter(({ code }) => practice.has(code)))
    addTo(notes, problem.file, problem);
  return notes;
}

/** The closing line of a report: what was read, and how much is wrong with it. */
import type { LocatedProblem } from "../reader/locate.ts";
import type { RecordCounts } from "../reader/read-archive-files.ts";
import { countSeverities } from "./located-problem.ts";

/** Says in words what was read. */
export function sayWhatWasRead(counts: RecordCounts): string {
  const { tiles, sets, firings, glazes, clays, materials, pictures } = counts;
  const parts = [
    counted(tiles, "tile"),
    counted(sets, "set"),
    counted(pictures, "photograph"),
    counted(firings, "firing"),
    counted(glazes, "glaze"),
    counted(clays, "clay"),
    counted(materials, "material"),
  ];
  return `Read ${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}.`;
}

/** Says in words how many problems there are. */
export function sayHowMany(problems: readonly LocatedProblem[]): string {
  const { errors, warnings } = countSeverities(problems);
  if (problems.length === 0) return "No errors, no warnings.";
  return `${errors === 0 ? "No errors" : counted(errors, "error")}, ${
    warnings === 0 ? "no warnings" : counted(warnings, "warning")
  }.`;
}

function counted(count: number, what: string): string {
  return `${count} ${what}${count === 1 ? "" : "s"}`;
}

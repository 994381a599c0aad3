import type { Archive } from "../records/archive.ts";
import type { Problem } from "../records/problem.ts";
import { type Check, toProblem } from "./check.ts";

/** A term and its kiln, generously. */
const longestWait = 16;

export const longWaiting: Check = {
  name: "long-waiting",
  severity: "warning",
  explains: `A tile is still without result or fate more than ${longestWait} weeks after it was glazed.`,
};

/**
 * Tiles that have waited for more than a term. Only `check` asks, for the answer changes with the
 * day, and a site does not.
 *
 * @param today as ISO 8601, such as 2026-10-14
 */
export function findLongWaiting(archive: Archive, today: string): readonly Problem[] {
  return [...archive.tiles.values()].flatMap((tile) => {
    const { glazed, result, fate } = tile.record;
    if (glazed === undefined || result !== undefined || fate !== undefined) return [];
    const weeks = weeksBetween(glazed, today);
    if (weeks <= longestWait) return [];
    const finding = {
      path: ["glazed"],
      message: `${tile.id} was glazed on ${glazed}, ${Math.floor(weeks)} weeks ago, and has neither result nor fate`,
      hint: "If it has come out of the kiln, write its result; if nobody has it, write “fate: lost”.",
    };
    return toProblem(longWaiting, finding, tile.file);
  });
}

function weeksBetween(from: string, to: string): number {
  return (Date.parse(to) - Date.parse(from)) / (7 * 24 * 60 * 60 * 1000);
}

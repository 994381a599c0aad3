/** What of the archive the desk could not read, so that no count passes for the whole. */
import { count } from "../../templates/words/english/numbers.ts";
import type { DeskArchive } from "./types.ts";

/** Says how many records are missing on the desk's pages; undefined where none is. */
export function unreadWords({ archive, counts }: DeskArchive): string | undefined {
  const missing = [
    [counts.tiles - archive.tiles.size, "tile"],
    [counts.sets - archive.sets.size, "set"],
    [counts.firings - archive.firings.size, "firing"],
    [counts.glazes - archive.glazes.size, "glaze"],
  ] as const;
  const told = missing.flatMap(([number, what]) => (number > 0 ? [count(number, what)] : []));
  if (told.length === 0) return undefined;
  return `Not on this page, because of errors in them: ${told.join(", ")}. The command “check” tells them.`;
}

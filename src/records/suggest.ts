import { distance } from "fastest-levenshtein";

/**
 * The word that was probably meant.
 *
 * @param found what was written
 * @param known what would have been right
 * @returns the nearest known word within a third of its length (one letter at least), if any
 */
export function findNearest(found: string, known: Iterable<string>): string | undefined {
  const wanted = found.toLowerCase();
  let best: { word: string; steps: number } | undefined;
  for (const word of known) {
    const steps = distance(wanted, word.toLowerCase());
    const allowed = Math.max(1, Math.floor(Math.max(word.length, wanted.length) / 3));
    if (steps <= allowed && (!best || steps < best.steps)) best = { word, steps };
  }
  return best?.word;
}

/** `Did you mean “satin”?`, or else the whole list of what would be right. */
export function suggestOneOf(found: string, known: readonly string[]): string {
  const nearest = findNearest(found, known);
  return nearest ? `Did you mean “${nearest}”?` : `Choose from: ${known.join(", ")}.`;
}

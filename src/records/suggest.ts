import { distance } from "fastest-levenshtein";

/**
 * The word that was probably meant.
 *
 * @param found what was written
 * @param known what would have been right
 * @returns the nearest known word within a third of its length, if any; words of one or two
 * letters are too short to guess
 */
export function findNearest(found: string, known: Iterable<string>): string | undefined {
  const wanted = found.toLowerCase();
  let best: { word: string; steps: number } | undefined;
  for (const word of known) {
    const longest = Math.max(word.length, wanted.length);
    const allowed = longest > 2 ? Math.max(1, Math.floor(longest / 3)) : 0;
    // Every letter more is a step, so that most words need not be compared at all.
    if (Math.abs(word.length - wanted.length) > allowed + 1) continue;
    const steps = countSteps(wanted, word.toLowerCase());
    if (steps <= allowed && (!best || steps < best.steps)) best = { word, steps };
  }
  return best?.word;
}

/** How many slips lie between two words; letters in another order are one slip of a hasty hand. */
function countSteps(a: string, b: string): number {
  const isReordered = a !== b && a.length === b.length && sortLetters(a) === sortLetters(b);
  return isReordered ? 1 : distance(a, b);
}

function sortLetters(word: string): string {
  return [...word].sort().join("");
}

/** `Did you mean “satin”?`, or else the whole list of what would be right. */
export function suggestOneOf(found: string, known: readonly string[]): string {
  const nearest = findNearest(found, known);
  return nearest ? `Did you mean “${nearest}”?` : `Choose from: ${known.join(", ")}.`;
}

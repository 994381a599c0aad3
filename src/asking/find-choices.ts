/** Finds among hundreds of choices those that somebody types the beginning of. */
import { idKey } from "../terms/ids.ts";
import type { Choice } from "./prompts.ts";

/**
 * The choices that a typed text may mean, whatever its case: those that are called exactly so first,
 * then those that begin with it, then those with a word that begins with it, then those that hold it;
 * in their own order otherwise. All of them for an empty text.
 */
export function findChoices(choices: readonly Choice[], typed: string): readonly Choice[] {
  const wanted = spoken(typed.trim());
  if (wanted === "") return choices;
  return choices
    .flatMap((choice) => {
      const ranks = wordsOf(choice).map((word) => rankOf(word, wanted));
      const rank = Math.min(...ranks);
      return rank < held ? [{ choice, rank }] : [];
    })
    .sort((a, b) => a.rank - b.rank)
    .map(({ choice }) => choice);
}

function wordsOf({ value, label, also = [] }: Choice): readonly string[] {
  return [value, label, ...also].map(spoken);
}

/** `red iron` finds `red-iron-oxide`. */
function spoken(word: string): string {
  return idKey(word).replace(/[-_\s]+/gu, " ");
}

const held = 4;

function rankOf(word: string, wanted: string): number {
  if (word === wanted) return 0;
  if (word.startsWith(wanted)) return 1;
  const at = word.indexOf(wanted);
  if (at < 0) return held;
  return /[\p{L}\p{N}]/u.test(word[at - 1] ?? "") ? 3 : 2;
}

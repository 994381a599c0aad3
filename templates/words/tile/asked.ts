/** What a set asked, and what came of it, in words as strong as the number of tiles allows. */
import type { Asked, Tally } from "../../../src/catalogue/asked.ts";
import type { Aspect } from "../../../src/likeness/make-up.ts";
import { capital, count, listed } from "../english/numbers.ts";
import { unwrittenWords } from "./likeness.ts";

const questions: Readonly<Record<Aspect, string>> = {
  area: "where it was put",
  atmosphere: "which atmosphere",
  bisque: "how the bisque was fired",
  clay: "which clay",
  coats: "how many coats",
  cone: "how hot",
  cooling: "how it cooled",
  dipping: "how long it was dipped",
  dried: "how dry it was underneath",
  fire: "ash or salt in the kiln",
  shape: "which shape",
  texture: "which texture",
  thickness: "how thick",
  way: "how it was put on",
  what: "which glaze",
};

/** `how it cooled`: what differs while the rest is the same. */
export function questionWords(aspect: Aspect): string {
  return questions[aspect];
}

/**
 * `From one to the next, the surface changed in 3 of 3 and the faults in 1 of 3. How far it ran stayed
 * the same. That is 3 comparisons: a hint, not a rule.`
 *
 * @param between where something was changed, at the head of a sentence
 * @param within what all of the comparisons are of
 */
export function didSentence(
  { did, unknown }: Pick<Asked, "did" | "unknown">,
  between = "From one to the next",
  within = "set",
): string {
  const known = looks.filter(({ look }) => did[look].of > 0);
  const changed = known.filter(({ look }) => did[look].changed > 0);
  const kept = known.filter(({ look }) => did[look].changed === 0);
  const words = changed.map(({ look, told }, i) =>
    [told, i === 0 && "changed", `in ${tallyWords(did[look])}`].filter(Boolean).join(" "),
  );
  return [
    words.length > 0 && `${between}, ${listed(words)}.`,
    kept.length > 0 && `${capital(listed(kept.map(({ same }) => same)))} stayed the same.`,
    known.length === 0 && "Nobody wrote down what came of both.",
    strengthWords(did.comparisons, within),
    unknown.length > 0 && `${capital(unwrittenWords(unknown))}.`,
  ]
    .filter(Boolean)
    .join(" ");
}

const looks = [
  { look: "surface", told: "the surface", same: "the surface" },
  { look: "faults", told: "the faults", same: "the faults" },
  { look: "ran", told: "how far it ran (by 5\u00a0mm or more)", same: "how far it ran" },
  {
    look: "colour",
    told: "the colour (by more than tiles made alike differ here)",
    same: "the colour (as near as tiles made alike come here)",
  },
  { look: "again", told: "the verdict", same: "the verdict" },
] as const;

function tallyWords({ changed, of }: Tally): string {
  return `${changed} of ${of}`;
}

/** From so many comparisons on they are more than a hint. Common practice, no source. */
const enough = 5;

function strengthWords(comparisons: number, within: string): string {
  if (comparisons === 1) return "That is one comparison: it may be chance.";
  return comparisons < enough
    ? `That is ${count(comparisons, "comparison")}: a hint, not a rule.`
    : `That is ${count(comparisons, "comparison")} of this ${within} alone.`;
}

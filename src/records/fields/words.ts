/** Fields that hold words: free text, choices, days, references. */
import { suggestOneOf } from "../suggest.ts";
import { isDay, notADay } from "./days.ts";
import { type Named, scalar } from "./scalar.ts";

/** Words of the author's own. */
export const text = () => scalar((found) => ({ value: found }), { type: ["string", "number"] });

/** The name of somebody who commits: git keeps a mail address apart from it, and so does an archive. */
export const nameOfCommitter = () =>
  scalar<string>(
    (found) =>
      found.includes("@")
        ? {
            code: "mail-address",
            message: `“${found}” is a mail address, or holds one`,
            hint: "Write the name alone, as “git log” shows it before the address.",
          }
        : { value: found },
    { type: "string" },
  );

/** A day of the calendar, as ISO 8601 writes it: `2026-10-14`. The value stays text. */
export const day = () =>
  scalar<string>((found) => (isDay(found) ? { value: found } : notADay(found)), {
    type: "string",
    format: "date",
  });

const truths: ReadonlyMap<string, boolean> = new Map([
  ["yes", true],
  ["true", true],
  ["no", false],
  ["false", false],
]);

/** Yes or no. */
export const yesNo = () =>
  scalar<boolean>(
    (found) => {
      const value = truths.get(found.toLowerCase());
      if (value !== undefined) return { value };
      return {
        code: "not-yes-or-no",
        message: `“${found}” was found where yes or no belongs`,
        hint: "Write yes or no.",
      };
    },
    { enum: ["yes", "no", true, false] },
  );

/** One of a list of choices. */
export function choice<const T extends string>(known: readonly T[]) {
  return scalar<T>(
    (found) => {
      const value = known.find((word) => word.toLowerCase() === found.toLowerCase());
      if (value !== undefined) return { value };
      return {
        code: "unknown-choice",
        message: `“${found}” is not among the choices here`,
        hint: hintFor(found, known),
      };
    },
    { enum: known },
  );
}

function hintFor(found: string, known: readonly string[]): string {
  if (/^(?:no|nil|nothing|0|-|n\/a)$/iu.test(found) && known.includes("none"))
    return "Write “none” where somebody looked and found nothing; take the line out where nobody looked.";
  const [, word, times] = /^([\p{L}-]{1,20})\s*[x×*]\s*(\d{1,2})$/iu.exec(found) ?? [];
  if (word !== undefined && known.includes(word.toLowerCase()))
    return `Write “${word.toLowerCase()}” here, and the number in a field of its own: “coats: ${times}”.`;
  return suggestOneOf(found, known);
}

/** One of a list of choices, or words of the author's own; `known` is what an editor offers. */
export function choiceOrOwnWords(known: readonly string[]) {
  return scalar<string>((found) => ({ value: found }), {
    anyOf: [{ enum: known }, { type: "string" }],
  });
}

/**
 * The id of another record, or a code; whether it exists is found out later.
 *
 * @param names what it may be the id of, for editors; nothing for what is yet to be named
 */
export const reference = (...names: readonly Named[]) =>
  scalar<string>((found) => ({ value: found }), { type: ["string", "number"] }, names);

/** Fields that hold words: free text, choices, days, references. */
import { suggestOneOf } from "../suggest.ts";
import { scalar } from "./scalar.ts";

/** Words of the author's own. */
export const text = () => scalar((found) => ({ value: found }), { type: ["string", "number"] });

/** A day of the calendar, as ISO 8601 writes it: `2026-10-14`. The value stays text. */
export const day = () =>
  scalar<string>(
    (found) =>
      isDay(found)
        ? { value: found }
        : {
            code: "not-a-day",
            message: `“${found}” is no day of the calendar`,
            hint: "Write year, month and day, as in 2026-10-14.",
          },
    { type: "string", format: "date" },
  );

function isDay(found: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/u.test(found)) return false;
  const date = new Date(`${found}T00:00:00Z`);
  return !Number.isNaN(date.getTime()) && date.toISOString().startsWith(found);
}

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
        message: `“${found}” is neither yes nor no`,
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
        hint: suggestOneOf(found, known),
      };
    },
    { enum: known },
  );
}

/** One of a list of choices, or words of the author's own; `known` is what an editor offers. */
export function choiceOrOwnWords(known: readonly string[]) {
  return scalar<string>((found) => ({ value: found }), {
    anyOf: [{ enum: known }, { type: "string" }],
  });
}

/** The id of another record, or a code; whether it exists is found out later. */
export const reference = () =>
  scalar<string>((found) => ({ value: found }), { type: ["string", "number"] });

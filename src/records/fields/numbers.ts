/** Fields that hold numbers. */
import * as z from "zod";
import { list } from "./containers.ts";
import { scalar } from "./scalar.ts";

/** No figure of a studio comes near it, and sums of such figures stay figures. */
const greatest = 1e9;

/** A number, with a point or a comma for the decimals; `expected` names it and its unit. */
export function number(
  expected: string,
  allowed: { above?: number; from?: number; to?: number } = {},
) {
  return scalar<number>(
    (found) => {
      if (isThousands(found)) return ambiguous(found);
      const value = Number(found.replace(",", "."));
      const isNumber = /^[+-]?(\d+([.,]\d*)?|[.,]\d+)$/u.test(found);
      if (isNumber && Math.abs(value) > greatest) return tooGreat(expected);
      if (isNumber && isAllowed(value, allowed)) return { value };
      return {
        code: "not-a-number",
        message: `“${found}” is not ${withArticle(expected)}`,
        hint: `Write ${describeAllowed(allowed)}, without its unit.`,
      };
    },
    { type: ["number", "string"] },
  );
}

/** `1,215` is 1.215 to some and 1215 to others. */
function isThousands(found: string): boolean {
  return /^[+-]?[1-9]\d{0,2}(?:,\d{3})+$/u.test(found);
}

function ambiguous(found: string) {
  const whole = found.replaceAll(",", "");
  return {
    code: "ambiguous-number",
    message: `The comma of “${found}” may stand before thousands or before decimals`,
    hint: `Write ${whole}, or the decimals with a point.`,
  };
}

/** The figure itself is not told: it may have hundreds of digits. */
function tooGreat(expected: string) {
  return {
    code: "not-a-number",
    message: `A number above a thousand million is not ${withArticle(expected)}`,
    hint: "Look for digits too many.",
  };
}

function isAllowed(
  value: number,
  allowed: { above?: number; from?: number; to?: number },
): boolean {
  return (
    (allowed.above === undefined || value > allowed.above) &&
    (allowed.from === undefined || value >= allowed.from) &&
    (allowed.to === undefined || value <= allowed.to)
  );
}

function describeAllowed(allowed: { above?: number; from?: number; to?: number }): string {
  if (allowed.above !== undefined) return `a number above ${allowed.above}`;
  if (allowed.from !== undefined && allowed.to !== undefined)
    return `a number from ${allowed.from} to ${allowed.to}`;
  if (allowed.from !== undefined) return `a number of at least ${allowed.from}`;
  return "a number";
}

/** Fewer parts than this nobody weighs, and shares of them would be lost in rounding. */
const least = 1e-6;

/** Parts by weight. */
export const parts = () =>
  scalar<number>(
    (found) => {
      if (isThousands(found)) return ambiguous(found);
      const value = Number(found.replace(",", "."));
      const isNumber = /^(\d+([.,]\d*)?|[.,]\d+)$/u.test(found);
      if (isNumber && value > greatest) return tooGreat("number of parts");
      if (isNumber && value >= least) return { value };
      return {
        code: "parts-not-positive",
        message: `“${found}” is not a number of parts`,
        hint: "Parts by weight are a number above 0; take the line out where there is none of it.",
      };
    },
    { type: ["number", "string"] },
  );

const numberWords = "one two three four five six seven eight nine ten eleven twelve".split(" ");

/** What to write for `two`, `2 coats`, `2x` or `x2`. */
function meantBy(found: string): string | undefined {
  const digits = /^[x×]?\s?(\d{1,2})\s?(?:[x×]|coats?)?$/iu.exec(found)?.[1];
  const number = digits ?? String(numberWords.indexOf(found.toLowerCase()) + 1);
  return Number(number) > 0 && number !== found ? `Write the number alone: ${number}.` : undefined;
}

function withArticle(words: string): string {
  return `${/^[aeiou]/u.test(words) ? "an" : "a"} ${words}`;
}

/** A whole number. */
export function wholeNumber(expected: string, from: number, to: number) {
  return scalar<number>(
    (found) => {
      const value = Number(found);
      if (/^\d+$/u.test(found) && value >= from && value <= to) return { value };
      return {
        code: "not-a-number",
        message: `“${found}” is not ${withArticle(expected)}`,
        hint: meantBy(found) ?? `Write a whole number from ${from} to ${to}.`,
      };
    },
    { type: ["integer", "string"] },
  );
}

/** Two numbers, the lower first in the value whichever way they were written. */
export const numberPair = (expected: string) =>
  list(number(expected)).transform((found, context): readonly [number, number] => {
    const [first, second] = found;
    if (found.length === 2 && first !== undefined && second !== undefined && first !== second)
      return first < second ? [first, second] : [second, first];
    context.addIssue({
      code: "custom",
      message: `Two different numbers belong here, each ${withArticle(expected)}\nWrite them as in [20, 500]; between brackets, decimals need a point: 20.5.`,
      params: { code: "bad-pair" },
    });
    return z.NEVER;
  });

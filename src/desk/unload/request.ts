/** What the page of unloading sends, doubted. */

import type { Outcome } from "../../loads/outcome.ts";
import { fieldsOf, unreadable } from "../../local-server/body.ts";
import { agains, effects, fates, faults, surfaces } from "../../terms/choices.ts";
import type { OutcomeRequest } from "./types.ts";

/** Letters of a line for next time: more than anybody types at a kiln. */
const longestLine = 1000;

/** @throws Refused where it is no such request */
export function parseOutcomeRequest(body: unknown): OutcomeRequest {
  const { firing, code, seen, said, outcome } = fieldsOf(body);
  return {
    ...{ firing: text(firing), code: text(code), seen: text(seen) },
    said: said === undefined ? undefined : text(said),
    outcome: parseOutcome(outcome),
  };
}

/** The day a kiln was lit, and which firing it was. */
export interface LitRequest {
  readonly firing: string;
  readonly seen: string;
  readonly on: string;
}

/** @throws Refused where it is no such request */
export function parseLitRequest(body: unknown): LitRequest {
  const { firing, seen, on } = fieldsOf(body);
  return { firing: text(firing), seen: text(seen), on: text(on) };
}

function parseOutcome(value: unknown): Outcome {
  const fields = fieldsOf(value);
  const run = orNull(fields.run);
  const line = orNull(fields.nextTime);
  return {
    surface: some(fields.surface, surfaces),
    effects: some(fields.effects, effects),
    faults: some(fields.faults, [...faults, "none"] as const),
    run: run === "" ? null : run,
    again: oneOf(fields.again, agains),
    nextTime: line === null ? null : onOneLine(line) || null,
    fate: oneOf(fields.fate, fates),
  };
}

function some<T extends string>(value: unknown, known: readonly T[]): readonly T[] {
  if (!Array.isArray(value) || value.length > known.length) throw unreadable();
  return value.map((each) => oneOf(each, known) ?? refuse());
}

function oneOf<T extends string>(value: unknown, known: readonly T[]): T | null {
  return value === null ? null : (known.find((each) => each === value) ?? refuse());
}

function refuse(): never {
  throw unreadable();
}

function orNull(value: unknown): string | null {
  return value === null ? null : text(value).trim();
}

/** What cannot be seen has no place in a record; a line that was pasted is one line. */
function onOneLine(line: string): string {
  return line
    .replace(/[\p{Cc}\p{Cf}\u2028\u2029]+/gu, " ")
    .replace(/ {2,}/gu, " ")
    .trim();
}

function text(value: unknown): string {
  if (typeof value !== "string" || value.length > longestLine) throw unreadable();
  return value;
}

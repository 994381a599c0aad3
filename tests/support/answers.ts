/** Prompts that a test answers. */
import { findChoices } from "../../src/asking/find-choices.ts";
import { type Choice, type Prompts, Stopped } from "../../src/asking/prompts.ts";

/** Answers with Ctrl-C. */
export const stop: unique symbol = Symbol("stop");

export type Answer = string | boolean | typeof stop;

export interface Answered {
  readonly prompts: Prompts;
  /** Every question, what was told in between, and why an answer was asked for again. */
  readonly said: string[];
  /** Answers that nobody asked for. */
  readonly left: () => number;
}

/**
 * Answers in their order: of a choice, what somebody types to find it; true or false where something is agreed to. An
 * empty text leaves what stands there, or takes the first choice.
 */
export function answering(...answers: readonly Answer[]): Answered {
  const said: string[] = [];
  const left = [...answers];
  const next = (question: string) => {
    said.push(question);
    const answer = left.shift();
    if (answer === stop) throw new Stopped();
    if (answer === undefined) throw new Error(`Nobody answers: ${question}`);
    return answer;
  };
  const find = (choices: readonly Choice[], typed: string) => {
    const [found] = findChoices(choices, typed);
    return found?.value;
  };
  const prompts: Prompts = {
    tell: (words) => void said.push(words),
    async write(question, { begin = "", faultOf } = {}) {
      for (;;) {
        const answer = String(next(question)) || begin;
        const fault = faultOf?.(answer.trim());
        if (fault === undefined) return answer.trim();
        said.push(fault);
      }
    },
    async choose(question, choices, { own = false, faultOf } = {}) {
      for (;;) {
        const typed = String(next(question));
        const value = find(choices, typed) ?? (own ? typed : undefined);
        const fault = value === undefined ? "Nothing here is called that." : faultOf?.(value);
        if (value !== undefined && fault === undefined) return value;
        said.push(fault ?? "");
      }
    },
    agree: async (question) => next(question) === true,
  };
  return { prompts, said, left: () => left.length };
}

/** Asks a person at a terminal, with search through long lists. Alone knows the package that draws it. */
import { autocomplete, confirm, isCancel, log, text } from "@clack/prompts";
import { findChoices } from "../asking/find-choices.ts";
import { type Choice, type Choosing, type Prompts, Stopped } from "../asking/prompts.ts";
import { makeVisible } from "../reporting/visible.ts";

/** As many lines of a list as a small terminal has room for. */
const maxItems = 10;

/** For a terminal that somebody sits at: where none is, the package ends the program without a word. */
export function terminalPrompts(): Prompts {
  const output = process.stderr;
  return {
    tell: (words) => log.message(words.split("\n").map(makeVisible), { output }),
    write: async (question, { begin = "", faultOf } = {}) => {
      const validate = (typed = "") => faultOf?.(typed.trim());
      const asked = { message: makeVisible(question), initialValue: begin, validate, output };
      return answerOf(await text(asked))?.trim() ?? "";
    },
    choose: (question, choices, how) => chooseOne(question, choices, how ?? {}),
    agree: async (message) => answerOf(await confirm({ message, output: process.stderr })),
  };
}

function answerOf<T>(answer: T): Exclude<T, symbol> {
  if (isCancel(answer)) throw new Stopped();
  return answer as Exclude<T, symbol>;
}

/**
 * Each typing names the options anew, so that the best match is the one that Enter takes, and not the
 * one that was best before.
 */
async function chooseOne(
  question: string,
  choices: readonly Choice[],
  { own = false, faultOf }: Choosing,
): Promise<string> {
  const found = (typed: string) => {
    const known = findChoices(choices, typed);
    const word = typed.trim();
    const isNew = own && word !== "" && !known.some(({ value }) => value === word);
    return isNew ? [...known, { value: word, label: `“${word}”, as it is written` }] : known;
  };
  const valueBehind = (key: string | undefined) => {
    const [, at = "", typed = ""] = /^(\d+) (.*)$/su.exec(key ?? "") ?? [];
    return found(typed)[Number(at)]?.value;
  };
  const answer = await autocomplete<string>({
    message: makeVisible(question),
    options() {
      const typed = this.userInput;
      return found(typed).map(({ label, hint }, at) => ({
        ...{ value: `${at} ${typed}`, label: makeVisible(label) },
        ...(hint !== undefined && { hint: makeVisible(hint) }),
      }));
    },
    filter: () => true,
    validate(key) {
      const value = typeof key === "string" && key !== "" ? valueBehind(key) : undefined;
      return value === undefined ? "Nothing here is called that." : faultOf?.(value);
    },
    ...{ maxItems, output: process.stderr },
  });
  return valueBehind(answerOf(answer)) ?? "";
}

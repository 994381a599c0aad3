/** Asks a person at a terminal for what the command line did not say. */
import { createInterface } from "node:readline/promises";

/** Asks one question and gives the answer, without the spaces around it. */
export type Ask = (question: string) => Promise<string>;

/** Whether somebody sits at a terminal: where not, nothing may be asked. */
export function isAtTerminal(): boolean {
  return process.stdin.isTTY === true && process.stderr.isTTY === true;
}

/** Undefined where nobody sits at a terminal: then nothing may be asked. */
export function terminalAsk(): Ask | undefined {
  if (!isAtTerminal()) return undefined;
  return async (question) => {
    const lines = createInterface({ input: process.stdin, output: process.stderr });
    try {
      return (await lines.question(`${question} `)).trim();
    } finally {
      lines.close();
    }
  };
}

/**
 * Whether what was just shown may be done: it was said on the command line, or somebody says so
 * now. Where not, standard error tells that nothing was changed.
 */
export async function mayDo(options: {
  readonly yes: boolean;
  readonly ask: Ask | undefined;
}): Promise<boolean> {
  const { yes, ask } = options;
  if (yes) return true;
  const answer = await ask?.("Do it? (y/n)");
  if (/^y(es)?$/iu.test(answer ?? "")) return true;
  console.error(
    ask
      ? "Nothing was changed."
      : "Nothing was changed: add --yes to do it where nobody can be asked.",
  );
  return false;
}

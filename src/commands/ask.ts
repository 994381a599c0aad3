/** Asks a person at a terminal for what the command line did not say. */
import { createInterface } from "node:readline/promises";

/** Asks one question and gives the answer, without the spaces around it. */
export type Ask = (question: string) => Promise<string>;

/** Undefined where nobody sits at a terminal: then nothing may be asked. */
export function terminalAsk(): Ask | undefined {
  if (process.stdin.isTTY !== true || process.stderr.isTTY !== true) return undefined;
  return async (question) => {
    const lines = createInterface({ input: process.stdin, output: process.stderr });
    try {
      return (await lines.question(`${question} `)).trim();
    } finally {
      lines.close();
    }
  };
}

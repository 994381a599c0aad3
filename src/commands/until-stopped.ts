/** Runs a command that asks, until whoever is asked wants no more of it. */
import { type Prompts, Stopped } from "../asking/prompts.ts";
import { isAtTerminal } from "./ask.ts";
import { exitCodes } from "./failure.ts";

/** @param run is given undefined where nobody is there to be asked */
export async function untilStopped(
  run: (prompts: Prompts | undefined) => Promise<number>,
): Promise<number> {
  if (!isAtTerminal()) return await run(undefined);
  const { terminalPrompts } = await import("./terminal-prompts.ts");
  process.once("SIGINT", stop);
  try {
    return await run(terminalPrompts());
  } catch (cause) {
    if (!(cause instanceof Stopped)) throw cause;
    console.error(nothing);
    return exitCodes.done;
  } finally {
    process.off("SIGINT", stop);
  }
}

const nothing = "Nothing was written.";

/**
 * Ctrl-C between two questions, while the record is checked. Files are written in one go, with which the command
 * ends: a signal is heard before that or not at all.
 */
function stop(): void {
  console.error(nothing);
  process.exit(exitCodes.done);
}

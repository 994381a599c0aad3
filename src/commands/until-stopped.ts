/** Runs a command that asks, until whoever is asked wants no more of it. */
import { type Prompts, Stopped } from "../asking/prompts.ts";
import { isAtTerminal } from "./ask.ts";
import { exitCodes } from "./failure.ts";

/** @param run is given undefined where nobody is there to be asked */
export async function untilStopped(
  run: (prompts: Prompts | undefined) => Promise<number>,
): Promise<number> {
  try {
    if (!isAtTerminal()) return await run(undefined);
    const { terminalPrompts } = await import("./terminal-prompts.ts");
    return await run(terminalPrompts());
  } catch (cause) {
    if (!(cause instanceof Stopped)) throw cause;
    console.error("Nothing was written.");
    return exitCodes.done;
  }
}

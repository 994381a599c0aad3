/** How `tilebook rename` is written. */
import { archiveOption } from "../arguments.ts";
import type { AddCommand } from "../line.ts";

export const addRename: AddCommand = (program, { finish }) => {
  program
    .command("rename")
    .description("give a tile another code; its old address leads on to the new one")
    .argument("<old>", "the code that the tile has now")
    .argument("<new>", "the code that it is to have")
    .option("--yes", "do it without asking", false)
    .option(...archiveOption)
    .action(async (old: string, code: string, options) => {
      const [{ rename }, { terminalAsk }] = await Promise.all([
        import("./rename.ts"),
        import("../ask.ts"),
      ]);
      finish(await rename(old, code, { ...options, ask: terminalAsk() }));
    });
};

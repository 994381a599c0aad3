/** How `tilebook forget` is written. */
import { archiveOption, cacheOption } from "../arguments.ts";
import type { AddCommand } from "../line.ts";

export const addForget: AddCommand = (program, { finish }) => {
  program
    .command("forget")
    .description("take a maker's name or a tile out, and tell what is left for people to do")
    .argument("<key>", "a maker's key in studio.yaml, or a tile's code")
    .option("--tiles", "a maker's tiles go too: records, photographs and notes", false)
    .option("--yes", "do it without asking", false)
    .option(...archiveOption)
    .option(...cacheOption)
    .action(async (key: string, options) => {
      const [{ forget }, { terminalAsk }] = await Promise.all([
        import("./forget.ts"),
        import("../ask.ts"),
      ]);
      finish(await forget(key, { ...options, ask: terminalAsk() }));
    });
};

/** How `tilebook serve` is written. */
import { archiveOption, cacheOption, outOption, readPort } from "../arguments.ts";
import type { AddCommand } from "../line.ts";

export const addServe: AddCommand = (program, { isQuiet, finish }) => {
  program
    .command("serve")
    .description("build the site, show it on this computer, and build it again when a file changes")
    .option(...archiveOption)
    .option(...outOption)
    .option(...cacheOption)
    .option("--port <number>", "the port to show it on", readPort, 8080)
    .option("--tablet", "let one tablet of the local network in too, by a code")
    .action(async (options) => {
      const { serve } = await import("./serve.ts");
      finish(await serve({ ...options, quiet: isQuiet() }));
    });
};

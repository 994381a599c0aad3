/** How `tilebook language-server` is written. */
import type { AddCommand } from "../line.ts";

export const addLanguageServer: AddCommand = (program, { finish }) => {
  program
    .command("language-server")
    .description("answer an editor over standard input and output; the editor starts it")
    .option("--stdio", "as many editors write it; it is always so", true)
    .action(async () => {
      const { languageServer } = await import("./language-server.ts");
      finish(await languageServer());
    });
};

/** How `tilebook receive` is written. */
import { archiveOption } from "../arguments.ts";
import type { AddCommand } from "../line.ts";

export const addReceive: AddCommand = (program, { finish }) => {
  program
    .command("receive")
    .description("take in tiles that makers handed in; it shows what it will do, and asks")
    .argument("<files...>", "zips, folders, records, photographs, a spreadsheet's CSV")
    .option(
      "--set <id>",
      "the set of tiles that name none; those without a code get one of its block",
    )
    .option("--yes", "take what is new without asking; nothing that is there is changed", false)
    .option(...archiveOption)
    .action(async (files: string[], options) => {
      const [{ receive }, { terminalAsk }] = await Promise.all([
        import("./receive.ts"),
        import("../ask.ts"),
      ]);
      finish(await receive(files, { ...options, ask: terminalAsk() }));
    });
};

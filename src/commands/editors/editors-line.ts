/** How `tilebook editors` is written. */
import { archiveOption } from "../arguments.ts";
import type { AddCommand } from "../line.ts";

export const addEditors: AddCommand = (program, { finish }) => {
  program
    .command("editors")
    .description("set the archive up for editors that complete and check what is typed")
    .option(...archiveOption)
    .action(async (options) => {
      const { editors } = await import("./editors.ts");
      finish(await editors(options));
    });
};

/** How `tilebook new-archive` is written. */
import type { AddCommand } from "../line.ts";

export const addNewArchive: AddCommand = (program, { finish }) => {
  program
    .command("new-archive")
    .description("begin an archive for a studio of your own")
    .argument("<folder>", "an empty folder, or one that is not there yet")
    .action(async (folder: string) => {
      const { newArchive } = await import("./new-archive.ts");
      finish(await newArchive(folder));
    });
};

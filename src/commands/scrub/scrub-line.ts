/** How `tilebook scrub` is written. */
import { archiveOption } from "../arguments.ts";
import type { AddCommand } from "../line.ts";

export const addScrub: AddCommand = (program, { finish }) => {
  program
    .command("scrub")
    .description(
      "take place, device, names and all else out of photographs, without touching the pictures",
    )
    .argument("[files...]", "photographs; all of the archive's if left out")
    .option(...archiveOption)
    .action(async (files: string[], options) => {
      const { scrub } = await import("./scrub.ts");
      finish(await scrub(files, options));
    });
};

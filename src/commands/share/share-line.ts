/** How `tilebook share` is written. */
import { Option } from "commander";
import { archiveOption, cacheOption } from "../arguments.ts";
import type { AddCommand } from "../line.ts";

export const addShare: AddCommand = (program, { isQuiet, finish }) => {
  program
    .command("share")
    .description("write one set alone, as a folder and a zip to hand on, with nothing of any other")
    .argument("<set>", "the set: the name of its folder in tiles/")
    .addOption(
      new Option(
        "--for <whom>",
        "leave out what is not for families: tiles without a photograph or with “again: no”, notes not marked with show-notes",
      ).choices(["families"]),
    )
    .option(
      "--out <folder>",
      "where it is written, with the zip beside it; a folder in shared/ in the archive if left out",
    )
    .option("--yes", "do it without asking", false)
    .option(...archiveOption)
    .option(...cacheOption)
    .action(async (set: string, { for: whom, ...options }) => {
      const [{ share }, { terminalAsk }] = await Promise.all([
        import("./share.ts"),
        import("../ask.ts"),
      ]);
      const ask = terminalAsk();
      finish(await share(set, { ...options, whom: whom ?? "all", ask, quiet: isQuiet() }));
    });
};

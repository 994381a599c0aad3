/** How `tilebook changes` is written. */
import { Option } from "commander";
import { archiveOption, cacheOption } from "../arguments.ts";
import type { AddCommand } from "../line.ts";

export const addChanges: AddCommand = (program, { finish }) => {
  program
    .command("changes")
    .description("tell what a request changes, for whoever takes it in")
    .requiredOption("--since <ref>", "the branch, tag or commit that it is compared with")
    .option(...archiveOption)
    .option(...cacheOption)
    .addOption(
      new Option("--format <form>", "for a forge and its mail, or for programs")
        .choices(["markdown", "json"] as const)
        .default("markdown" as const),
    )
    .option("--pictures <address>", "where the repository's files can be read, with / at its end")
    .option(
      "--claimed <file>",
      "what open, earlier requests add: a number, a tab, a path on each line",
    )
    .action(async (options) => {
      const { changes } = await import("./changes.ts");
      finish(await changes(options));
    });
};

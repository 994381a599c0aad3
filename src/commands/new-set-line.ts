/** How `tilebook new set` is written. */
import type { Command } from "commander";
import { archiveOption, refuseBlendOptions } from "./arguments.ts";
import type { AddCommand } from "./line.ts";

/** A word behind `new`, which has to be there already. */
export const addNewSet: AddCommand = (program, { finish }) => {
  program.commands
    .find((command) => command.name() === "new")
    ?.command("set")
    .description("write the record of a new term's set after an old one; it shows it, and asks")
    .argument("<id>", "the new set's folder in tiles/")
    .requiredOption("--from <id>", "the set whose jars, defaults and kind are carried over")
    .option("--name <words>", "what people call the new set")
    .option("--begins <day>", "its first day, as in 2027-01-11")
    .option("--ends <day>", "its last day")
    .option("--yes", "do it without asking", false)
    .option(...archiveOption)
    .action(async (id: string, _, command: Command) => {
      refuseBlendOptions(command, "a set");
      const [{ newSet }, { terminalAsk }] = await Promise.all([
        import("./new-set.ts"),
        import("./ask.ts"),
      ]);
      finish(await newSet(id, command.optsWithGlobals(), terminalAsk()));
    });
};

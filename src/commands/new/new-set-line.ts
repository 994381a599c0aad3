/** How `tilebook new set` is written. */
import type { Command } from "commander";
import { archiveOption, refuseBlendOptions } from "../arguments.ts";
import type { AddCommand } from "../line.ts";
import type { NewSetOptions } from "./new-set-of.ts";

/** A word behind `new`, which has to be there already. */
export const addNewSet: AddCommand = (program, { finish }) => {
  program.commands
    .find((command) => command.name() === "new")
    ?.command("set")
    .description("write the record of a set, a new term's after an old one; it shows it, and asks")
    .argument(
      "[words...]",
      "the new set's folder in tiles/; without --from also fields, as in kind=class",
    )
    .option("--from <id>", "the set whose jars, defaults and kind are carried over")
    .option("--name <words>", "what people call the new set")
    .option("--begins <day>", "its first day, as in 2027-01-11")
    .option("--ends <day>", "its last day")
    .option("--yes", "do it without asking", false)
    .option(...archiveOption)
    .action(async (words: readonly string[], _, command: Command) => {
      refuseBlendOptions(command, "a set");
      const [{ newSetOf }, { untilStopped }] = await Promise.all([
        import("./new-set-of.ts"),
        import("../until-stopped.ts"),
      ]);
      const options = command.optsWithGlobals<NewSetOptions>();
      finish(await untilStopped((prompts) => newSetOf(words, options, prompts)));
    });
};

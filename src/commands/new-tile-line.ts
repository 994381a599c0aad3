/** How `tilebook new tile` is written. */
import type { Command } from "commander";
import { archiveOption } from "./arguments.ts";
import type { AddCommand } from "./line.ts";

/** A word behind `new`, which has to be there already. */
export const addNewTile: AddCommand = (program, { finish }) => {
  program.commands
    .find((command) => command.name() === "new")
    ?.command("tile")
    .description("write the record of one tile, its layers on one line; asks for what is left out")
    .option("--set <id>", "the set that it belongs to")
    .option("--code <code>", "its code; the set's next free one if left out")
    .option("--maker <key>", "who glazed it: a key of makers: in studio.yaml")
    .option("--layers <line>", 'its layers, the lowest first, as in "7 x2; 3 x1 top; wax motif"')
    .option("--notes <words>", "what happened, in the maker's words")
    .option(...archiveOption)
    .action(async (_, command: Command) => {
      refuseOthers(command);
      const [{ newTile }, { terminalAsk }] = await Promise.all([
        import("./new-tile.ts"),
        import("./ask.ts"),
      ]);
      finish(await newTile(command.optsWithGlobals(), terminalAsk()));
    });
};

/** Options of `new` itself are read wherever they stand; those that say nothing of a tile are refused. */
function refuseOthers(command: Command): void {
  const own = command.options.map((option) => option.attributeName());
  const given = command.parent?.options.find((option) => {
    const name = option.attributeName();
    return !own.includes(name) && command.parent?.getOptionValueSource(name) === "cli";
  });
  if (given) command.error(`error: ${given.long} is for a blend, and this is one tile`);
}

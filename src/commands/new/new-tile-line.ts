/** How `tilebook new tile` is written. */
import type { Command } from "commander";
import { archiveOption, refuseBlendOptions } from "../arguments.ts";
import type { AddCommand } from "../line.ts";
import type { NewTileOptions } from "./new-tile.ts";

/** A word behind `new`, which has to be there already. */
export const addNewTile: AddCommand = (program, { finish }) => {
  program.commands
    .find((command) => command.name() === "new")
    ?.command("tile")
    .description("write the record of one tile; asks for what is left out, layer by layer")
    .argument("[fields...]", "what else is known, as in texture=carved")
    .option("--set <id>", 'the set that it belongs to, "" for none')
    .option("--code <code>", "its code; the set's next free one if left out")
    .option("--maker <key>", "who glazed it: a key of makers: in studio.yaml")
    .option("--layers <line>", 'its layers, the lowest first, as in "7 x2; 3 x1 top; wax motif"')
    .option("--notes <words>", "what happened, in the maker's words")
    .option(...archiveOption)
    .action(async (fields: readonly string[], _, command: Command) => {
      refuseBlendOptions(command, "one tile");
      const [{ newTile }, { untilStopped }] = await Promise.all([
        import("./new-tile.ts"),
        import("../until-stopped.ts"),
      ]);
      const options = { ...command.optsWithGlobals<NewTileOptions>(), fields };
      finish(await untilStopped((prompts) => newTile(options, prompts)));
    });
};

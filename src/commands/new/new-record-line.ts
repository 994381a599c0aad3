/** How `tilebook new glaze`, `new clay`, `new material` and `new firing` are written. */
import type { Command } from "commander";
import { archiveOption, refuseBlendOptions } from "../arguments.ts";
import type { AddCommand } from "../line.ts";
import type { NewKind, NewRecordOptions } from "./new-record.ts";

const kinds: readonly (readonly [NewKind, string])[] = [
  ["glaze", "sea-green kind=glaze cones=5-6"],
  ["clay", "buff name=Buff cones=5-9"],
  ["material", "river-clay name=Clay"],
  ["firing", "g-1020 kind=glaze cone=6"],
];

/** Words behind `new`, which has to be there already. */
export const addNewRecords: AddCommand = (program, { finish }) => {
  for (const [kind, example] of kinds)
    program.commands
      .find((command) => command.name() === "new")
      ?.command(kind)
      .description(`write the record of one ${kind}; asks for what is left out`)
      .argument("[words...]", `its id, then what is known of it, as in ${example}`)
      .option("--notes <words>", "what is written below the fields, in your own words")
      .option(...archiveOption)
      .action(async (words: readonly string[], _, command: Command) => {
        refuseBlendOptions(command, `one ${kind}`);
        const [{ newRecord }, { untilStopped }] = await Promise.all([
          import("./new-record.ts"),
          import("../until-stopped.ts"),
        ]);
        const options = command.optsWithGlobals<NewRecordOptions>();
        finish(await untilStopped((prompts) => newRecord(kind, words, options, prompts)));
      });
};

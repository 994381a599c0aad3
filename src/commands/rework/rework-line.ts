/** How `tilebook rework` is written. */
import { archiveOption, formatOption, readIds } from "../arguments.ts";
import type { AddCommand } from "../line.ts";

export const addRework: AddCommand = (program, { finish }) => {
  program
    .command("rework")
    .description("find the recipe nearest to a glaze without one of its materials")
    .argument("<glaze>", "the id of a glaze that is weighed out of materials")
    .requiredOption("--without <material>", "the material that has run out")
    .option(
      "--with <materials>",
      "the only other materials that may come in, as in kaolin,talc; all of the archive's if left out",
      readIds,
    )
    .option(...archiveOption)
    .addOption(formatOption())
    .action(async (glaze: string, options) => {
      const { rework } = await import("./rework.ts");
      finish(await rework(glaze, options));
    });
};

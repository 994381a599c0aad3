/** How `tilebook materials` is written. */
import { formatOption } from "../arguments.ts";
import type { AddCommand } from "../line.ts";

export const addMaterials: AddCommand = (program, { finish }) => {
  program
    .command("materials")
    .description("list the raw materials that a recipe may name without a record")
    .option(
      "--archive <folder>",
      "the archive, to see which of them it has records of; the one here, if left out",
    )
    .addOption(formatOption())
    .action(async (options) => {
      const { materials } = await import("./materials.ts");
      finish(await materials(options));
    });
};

/** How `tilebook crop` is written. */
import { archiveOption, cacheOption, readPort } from "../arguments.ts";
import type { AddCommand } from "../line.ts";

export const addCrop: AddCommand = (program, { finish }) => {
  program
    .command("crop")
    .description(
      "show on photographs where the glaze and the grey card lie, and write it down for all of them",
    )
    .argument(
      "[names...]",
      "a set, or codes of tiles, to look at; left out, every photograph of the studio's copy stand",
    )
    .option(...archiveOption)
    .option(...cacheOption)
    .option("--port <number>", "the port to show it on", readPort, 8090)
    .action(async (names: string[], options) => {
      const { crop } = await import("./crop.ts");
      finish(await crop(names, options));
    });
};

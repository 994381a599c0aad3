/** How `tilebook build` is written. */
import { InvalidArgumentError } from "commander";
import { archiveOption, cacheOption, outOption } from "../arguments.ts";
import type { AddCommand } from "../line.ts";

export const addBuild: AddCommand = (program, { isQuiet, finish }) => {
  program
    .command("build")
    .description("check the archive and write its site")
    .option(...archiveOption)
    .option(...outOption)
    .option(...cacheOption)
    .option(
      "--address <url>",
      "where the site will be published, if not as studio.yaml says",
      readAddress,
    )
    .option("--set <id>", "the site of this set alone")
    .option(
      "--leave-out-faulty",
      "publish what is sound, and say on the home page what waits to be mended",
      false,
    )
    .action(async (options) => {
      const { build } = await import("./build.ts");
      finish(await build({ ...options, quiet: isQuiet() }));
    });
};

function readAddress(found: string): string {
  if (URL.canParse(found) && /^https?:/u.test(found)) return found;
  throw new InvalidArgumentError("Write the whole address, beginning with https://.");
}

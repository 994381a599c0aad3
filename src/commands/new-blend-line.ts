/** How `tilebook new` is written. */
import { InvalidArgumentError, Option } from "commander";
import { archiveOption, readIds } from "./arguments.ts";
import type { AddCommand } from "./line.ts";

export const addNewBlend: AddCommand = (program, { finish }) => {
  program
    .command("new")
    .description("write the records of a whole blend, and print a weighing sheet for it")
    .addOption(
      new Option(
        "--blend <shape>",
        "a line between two glazes, or a triangle between three",
      ).choices(["line", "triaxial"]),
    )
    .option("--of <glazes>", "the ids of the glazes at its ends, as in chalk,soot", readIds)
    .option("--steps <number>", "steps along an edge: 5 makes fifths", readSteps, 5)
    .addOption(
      new Option("--by <measure>", "volume for glazes in jars")
        .choices(["volume", "weight"])
        .default("weight"),
    )
    .option("--codes <codes>", "the first tile's code, or the whole range, as in LB-1..LB-6")
    .option("--set <id>", "the set for the tiles, made if it is not there; none if left out")
    .option("--clay <id>", "the clay of the tiles, where the set does not say")
    .option("--batch <amount>", "grams of each blend, or millilitres by volume", readBatch, 100)
    .option("--dry-run", "write nothing, and tell what would be written", false)
    .option(...archiveOption)
    .action(async (options, command) => {
      if (options.blend === undefined) command.error(sayWhat);
      const [{ newBlend }, { terminalAsk }] = await Promise.all([
        import("./new-blend.ts"),
        import("./ask.ts"),
      ]);
      finish(await newBlend(options, terminalAsk()));
    });
};

const sayWhat =
  "error: say what is new: “new tile” for a tile, “new set” for a term, or --blend line (or triaxial) for a whole blend";

/** Two steps would be a single blend, and no series. */
function readSteps(found: string): number {
  const steps = Number(found);
  if (/^\d+$/u.test(found) && steps >= 3 && steps <= 20) return steps;
  throw new InvalidArgumentError("Steps are a whole number from 3 to 20.");
}

function readBatch(found: string): number {
  const amount = Number(found.replace(",", "."));
  if (/^\d+([.,]\d+)?$/u.test(found) && amount > 0) return amount;
  throw new InvalidArgumentError("An amount is a number above 0, without its unit.");
}

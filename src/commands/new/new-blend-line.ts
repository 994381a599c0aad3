/** How `tilebook new` is written. */
import { type Command, InvalidArgumentError, Option } from "commander";
import { archiveOption, readIds } from "../arguments.ts";
import type { AddCommand } from "../line.ts";

export const addNewBlend: AddCommand = (program, { finish }) => {
  program
    .command("new")
    .description(
      "write a new record, or those of a whole blend and a weighing sheet for it; asks what",
    )
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
    .action(async (options, command: Command) => {
      if (options.blend === undefined) return finish(await askWhat(command));
      const [{ newBlend }, { terminalAsk }] = await Promise.all([
        import("./new-blend.ts"),
        import("../ask.ts"),
      ]);
      finish(await newBlend(options, terminalAsk()));
    });
};

const sayWhat =
  "error: say what is new: “new tile”, “new set”, “new glaze”, “new clay”, “new material” or “new firing”, or --blend line (or triaxial) for a whole blend";

/** Where nothing else is said and somebody is there, they are asked what is new. */
async function askWhat(command: Command): Promise<number> {
  const given = command.options.filter(
    (option) => command.getOptionValueSource(option.attributeName()) === "cli",
  );
  const { isAtTerminal } = await import("../ask.ts");
  if (!isAtTerminal() || given.some(({ long }) => long !== "--archive")) command.error(sayWhat);
  const [{ newAnything }, { untilStopped }] = await Promise.all([
    import("./new-anything.ts"),
    import("../until-stopped.ts"),
  ]);
  const { archive } = command.opts<{ readonly archive: string }>();
  return untilStopped((prompts) => newAnything(archive, prompts));
}

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

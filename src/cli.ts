/**
 * The command line: words in, an exit code out. A command's rooms are loaded when it is asked for,
 * so that `check` does not wait for what only `build` needs.
 */
import { Command, CommanderError, InvalidArgumentError, Option } from "commander";
import { exitCodes, tellFailure } from "./commands/failure.ts";
import { ownVersion } from "./commands/version.ts";
import type { ReportFormat } from "./reporting/report.ts";

/**
 * Runs one command.
 *
 * @param args what was written after `tilebook`
 * @returns 0 done, 1 the archive has errors, 2 wrong usage, 3 the machine failed
 */
export async function main(args: readonly string[]): Promise<number> {
  let code: number = exitCodes.done;
  const program = describeProgram((result) => {
    code = result;
  });
  try {
    await program.parseAsync(args, { from: "user" });
    return code;
  } catch (error) {
    if (error instanceof CommanderError)
      return error.exitCode === 0 ? exitCodes.done : exitCodes.usage;
    return tellFailure(error);
  }
}

const reportFormats: readonly ReportFormat[] = ["text", "json", "github"];

type Finish = (code: number) => void;

function describeProgram(finish: Finish): Command {
  const program = new Command("tilebook")
    .description(
      "Checks a pottery studio's archive of glaze tests and publishes it as a catalogue.",
    )
    .version(ownVersion(), "--version", "tell which Tilebook this is")
    .exitOverride()
    .configureHelp({ showGlobalOptions: true })
    .showHelpAfterError("(tilebook --help tells what there is)")
    .option("--quiet", "say nothing but faults", false);
  const isQuiet = () => program.opts<{ quiet: boolean }>().quiet;
  addCheck(program, finish);
  addBuild(program, isQuiet, finish);
  addServe(program, isQuiet, finish);
  addCrop(program, finish);
  addMaterials(program, finish);
  addNewArchive(program, finish);
  addNew(program, finish);
  addRework(program, finish);
  addScrub(program, finish);
  return program;
}

function addCheck(program: Command, finish: Finish): void {
  program
    .command("check")
    .description("find every fault of the archive")
    .option("--archive <folder>", "the archive", ".")
    .option("--cache <folder>", "where the pictures that were made are remembered between runs")
    .option("--format <form>", `${reportFormats.join(", ")}`, readFormat, "text" as const)
    .option("--all", "in text, tell a fault that many files share for each of them", false)
    .option("--fix", "show what can be mended without a guess, ask, and do it", false)
    .option("--yes", "with --fix: do it without asking", false)
    .action(async (options) => {
      const [{ check }, { terminalAsk }] = await Promise.all([
        import("./commands/check.ts"),
        import("./commands/ask.ts"),
      ]);
      finish(await check(options, terminalAsk()));
    });
}

function addBuild(program: Command, isQuiet: () => boolean, finish: Finish): void {
  program
    .command("build")
    .description("check the archive and write its site")
    .option("--archive <folder>", "the archive", ".")
    .option("--out <folder>", "where the site is written; site in the archive if left out")
    .option("--cache <folder>", "where the pictures that were made are remembered between runs")
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
      const { build } = await import("./commands/build.ts");
      finish(await build({ ...options, quiet: isQuiet() }));
    });
}

function addServe(program: Command, isQuiet: () => boolean, finish: Finish): void {
  program
    .command("serve")
    .description("build the site, show it on this computer, and build it again when a file changes")
    .option("--archive <folder>", "the archive", ".")
    .option("--out <folder>", "where the site is written; site in the archive if left out")
    .option("--cache <folder>", "where the pictures that were made are remembered between runs")
    .option("--port <number>", "the port to show it on", readPort, 8080)
    .action(async (options) => {
      const { serve } = await import("./commands/serve.ts");
      finish(await serve({ ...options, quiet: isQuiet() }));
    });
}

function addCrop(program: Command, finish: Finish): void {
  program
    .command("crop")
    .description(
      "show on photographs where the glaze and the grey card lie, and write it down for all of them",
    )
    .argument(
      "[names...]",
      "a set, or codes of tiles, to look at; left out, every photograph of the studio's copy stand",
    )
    .option("--archive <folder>", "the archive", ".")
    .option("--cache <folder>", "where the pictures that were made are remembered between runs")
    .option("--port <number>", "the port to show it on", readPort, 8090)
    .action(async (names: string[], options) => {
      const { crop } = await import("./commands/crop.ts");
      finish(await crop(names, options));
    });
}

function addMaterials(program: Command, finish: Finish): void {
  program
    .command("materials")
    .description("list the raw materials that a recipe may name without a record")
    .option(
      "--archive <folder>",
      "the archive, to see which of them it has records of; the one here, if left out",
    )
    .addOption(
      new Option("--format <form>", "for people or programs")
        .choices(["text", "json"])
        .default("text"),
    )
    .action(async (options) => {
      const { materials } = await import("./commands/materials.ts");
      finish(await materials(options));
    });
}

function addNewArchive(program: Command, finish: Finish): void {
  program
    .command("new-archive")
    .description("begin an archive for a studio of your own")
    .argument("<folder>", "an empty folder, or one that is not there yet")
    .action(async (folder: string) => {
      const { newArchive } = await import("./commands/new-archive.ts");
      finish(await newArchive(folder));
    });
}

function addNew(program: Command, finish: Finish): void {
  program
    .command("new")
    .description("write the records of a whole blend, and print a weighing sheet for it")
    .addOption(
      new Option("--blend <shape>", "a line between two glazes, or a triangle between three")
        .choices(["line", "triaxial"])
        .makeOptionMandatory(),
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
    .option("--archive <folder>", "the archive", ".")
    .action(async (options) => {
      const [{ newBlend }, { terminalAsk }] = await Promise.all([
        import("./commands/new-blend.ts"),
        import("./commands/ask.ts"),
      ]);
      finish(await newBlend(options, terminalAsk()));
    });
}

function addRework(program: Command, finish: Finish): void {
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
    .option("--archive <folder>", "the archive", ".")
    .addOption(
      new Option("--format <form>", "for people or programs")
        .choices(["text", "json"])
        .default("text"),
    )
    .action(async (glaze: string, options) => {
      const { rework } = await import("./commands/rework.ts");
      finish(await rework(glaze, options));
    });
}

function addScrub(program: Command, finish: Finish): void {
  program
    .command("scrub")
    .description(
      "take place, device, names and all else out of photographs, without touching the pictures",
    )
    .argument("[files...]", "photographs; all of the archive's if left out")
    .option("--archive <folder>", "the archive", ".")
    .action(async (files: string[], options) => {
      const { scrub } = await import("./commands/scrub.ts");
      finish(await scrub(files, options));
    });
}

function readIds(found: string): readonly string[] {
  const ids = found.split(",").map((id) => id.trim());
  if (ids.every((id) => id !== "")) return ids;
  throw new InvalidArgumentError("Write ids with commas between them, as in kaolin,talc.");
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

function readFormat(found: string): ReportFormat {
  const format = reportFormats.find((known) => known === found);
  if (format) return format;
  throw new InvalidArgumentError(`Choose from: ${reportFormats.join(", ")}.`);
}

function readPort(found: string): number {
  const port = Number(found);
  if (/^\d+$/u.test(found) && port > 0 && port < 65_536) return port;
  throw new InvalidArgumentError("A port is a whole number from 1 to 65535.");
}

function readAddress(found: string): string {
  if (URL.canParse(found) && /^https?:/u.test(found)) return found;
  throw new InvalidArgumentError("Write the whole address, beginning with https://.");
}

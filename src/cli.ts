/**
 * The command line: words in, an exit code out. Each command is described in its `*-line.ts`, and
 * its rooms are loaded when it is asked for: `check` does not wait for what only `build` needs.
 */
import { Command, CommanderError } from "commander";
import { addBuild } from "./commands/build/build-line.ts";
import { addChanges } from "./commands/changes/changes-line.ts";
import { addCheck } from "./commands/check/check-line.ts";
import { addCrop } from "./commands/crop/crop-line.ts";
import { addEditors } from "./commands/editors/editors-line.ts";
import { addLanguageServer } from "./commands/editors/language-server-line.ts";
import { exitCodes, tellFailure } from "./commands/failure.ts";
import { addForget } from "./commands/forget/forget-line.ts";
import type { AddCommand, Line } from "./commands/line.ts";
import { addMaterials } from "./commands/materials/materials-line.ts";
import { addNewArchive } from "./commands/new/new-archive-line.ts";
import { addNewBlend } from "./commands/new/new-blend-line.ts";
import { addNewRecords } from "./commands/new/new-record-line.ts";
import { addNewSet } from "./commands/new/new-set-line.ts";
import { addNewTile } from "./commands/new/new-tile-line.ts";
import { addReceive } from "./commands/receive/receive-line.ts";
import { addRename } from "./commands/rename/rename-line.ts";
import { addRework } from "./commands/rework/rework-line.ts";
import { addScrub } from "./commands/scrub/scrub-line.ts";
import { addServe } from "./commands/serve/serve-line.ts";
import { addShare } from "./commands/share/share-line.ts";
import { ownVersion } from "./commands/version.ts";

/** The commands, as `--help` lists them. */
const commands: readonly AddCommand[] = [
  addCheck,
  addBuild,
  addChanges,
  addServe,
  addCrop,
  addEditors,
  addForget,
  addLanguageServer,
  addMaterials,
  addNewArchive,
  addNewBlend,
  addNewSet,
  addNewTile,
  addNewRecords,
  addReceive,
  addRename,
  addRework,
  addScrub,
  addShare,
];

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

function describeProgram(finish: Line["finish"]): Command {
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
  for (const add of commands) add(program, { isQuiet, finish });
  return program;
}

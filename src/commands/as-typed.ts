/** How the reader of a report starts this Tilebook, as it was started. */
import { join, sep } from "node:path";
import { packageFolder } from "../compiled/own-files.ts";
import { quoteForShell, type TypedCommand, typedCommand } from "../terms/typed-command.ts";

const program = join(packageFolder, "src", "tilebook.mjs");

/** Gives commands as they can be typed where this one was, for the same archive. */
export function asTypedFor(archive: string): TypedCommand {
  const shell = process.platform === "win32" ? "windows" : "posix";
  return typedCommand({
    program: programAsTyped(process.cwd(), shell),
    shell,
    archive: archive === "." ? null : archive,
  });
}

/** In a studio's own archive Tilebook is a package; in a checkout it is the project itself. */
function programAsTyped(folder: string, shell: "posix" | "windows"): string {
  if (program.includes(`${sep}node_modules${sep}`)) return "npx tilebook";
  if (folder === packageFolder) return "npm run --silent tilebook --";
  return `node ${quoteForShell(program, shell) ?? "tilebook.mjs"}`;
}

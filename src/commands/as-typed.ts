/** How the reader of a report starts this Tilebook, as it was started. */
import { sep } from "node:path";
import { fileURLToPath } from "node:url";
import { quoteForShell, type TypedCommand, typedCommand } from "../terms/typed-command.ts";

const program = fileURLToPath(new URL("../tilebook.mjs", import.meta.url));
const checkout = fileURLToPath(new URL("../..", import.meta.url));

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
  if (`${folder}${sep}` === checkout) return "npm run --silent tilebook --";
  return `node ${quoteForShell(program, shell) ?? "tilebook.mjs"}`;
}

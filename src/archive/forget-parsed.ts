/** Takes away what earlier versions remembered of records: it held their words. */
import { readdirSync, rmdirSync, rmSync } from "node:fs";
import path from "node:path";
import { errorCode, onMachine } from "../disk/machine-error.ts";

/** How the files were named, finished or not. */
const ours = /^[0-9a-f]{2}(\.\d+)?$/u;

/**
 * Removes the parsed files of an earlier version from a cache; anything else in their folder stays.
 *
 * @throws MachineError where they cannot be removed
 */
export function forgetParsed(cacheDir: string): void {
  const folder = path.join(cacheDir, "parsed");
  const names = namesIn(folder);
  if (!names) return;
  onMachine("tidy", folder, () => {
    for (const name of names) if (ours.test(name)) rmSync(path.join(folder, name));
    if (names.every((name) => ours.test(name))) rmdirSync(folder);
  });
}

function namesIn(folder: string): readonly string[] | undefined {
  try {
    return readdirSync(folder);
  } catch (cause) {
    if (["ENOENT", "ENOTDIR"].includes(errorCode(cause) ?? "")) return undefined;
    return onMachine("list", folder, () => {
      throw cause;
    });
  }
}

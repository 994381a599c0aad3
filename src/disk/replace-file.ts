/** Puts a new text in the place of a file of the archive: whole, or not at all. */
import fs from "node:fs";
import path from "node:path";
import { onMachine } from "./machine-error.ts";
import { replaceWhole } from "./write-whole.ts";

/**
 * Replaces a file's content. It keeps its permissions; where it is a link to another file of the
 * archive, that one is replaced. A program that is killed meanwhile leaves the old file.
 *
 * @param dir the archive
 * @param file relative to it
 * @throws MachineError where disk or permissions fail, or the file lies outside of the archive
 */
export function replaceFile(dir: string, file: string, content: string): void {
  const target = onMachine("write", path.join(dir, file), () => findTarget(dir, file));
  onMachine("write", target, () => replaceWhole(target, content));
}

/** A file that may not be written is not replaced, though its folder would allow it. */
function findTarget(dir: string, file: string): string {
  const [root, target] = [fs.realpathSync(dir), fs.realpathSync(path.join(dir, file))];
  if (!target.startsWith(root + path.sep)) throw new Error("it lies outside of the archive");
  fs.accessSync(target, fs.constants.W_OK);
  return target;
}

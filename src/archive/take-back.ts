/** Takes the last change of a record's file back, letter for letter. */
import fs from "node:fs";
import path from "node:path";
import { onMachine } from "../disk/machine-error.ts";
import { replaceFile } from "../disk/replace-file.ts";

/** A file's text before a change and after it, as it was typed. */
export interface Changed {
  readonly before: string;
  readonly after: string;
}

/** A file's text as it was typed: ends of lines and all. */
export function typedText(dir: string, file: string): string {
  const absolute = path.join(dir, file);
  const bytes = onMachine("read", absolute, () => fs.readFileSync(absolute));
  return new TextDecoder("utf-8", { ignoreBOM: true }).decode(bytes);
}

/**
 * Puts the text from before the change back, where the file still holds what the change left.
 *
 * @returns false where it holds something else: then it is left alone
 * @throws MachineError where the disk or a permission fails
 */
export function takeBack(dir: string, file: string, { before, after }: Changed): boolean {
  if (typedText(dir, file) !== after) return false;
  replaceFile(dir, file, before);
  return true;
}

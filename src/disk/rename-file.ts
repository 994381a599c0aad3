/** Gives files of the archive other names: all of them or none, and nothing is ever overwritten. */
import fs from "node:fs";
import path from "node:path";
import { giveName, refuseOutside } from "./give-name.ts";
import { errorCode, onMachine } from "./machine-error.ts";

/** A file that gets another name. Both are relative to the archive. */
interface Renaming {
  readonly from: string;
  readonly to: string;
}

/** Why files were not renamed: one that is gone, or a name that is taken. */
export interface NotRenamed {
  readonly because: "gone" | "taken";
  readonly file: string;
}

/**
 * Renames files; where one cannot be, those before it get their old names back.
 *
 * @param dir the archive
 * @returns what was in the way, where nothing was renamed
 * @throws MachineError where disk or permissions fail, or a folder lies outside of the archive
 */
export function renameFiles(dir: string, renamings: readonly Renaming[]): NotRenamed | undefined {
  const done: Renaming[] = [];
  try {
    for (const renaming of renamings) {
      const inTheWay = renameFile(dir, renaming);
      if (inTheWay) {
        undo(dir, done);
        return inTheWay;
      }
      done.push(renaming);
    }
    return undefined;
  } catch (cause) {
    undo(dir, done);
    throw cause;
  }
}

function undo(dir: string, done: readonly Renaming[]): void {
  for (const { from, to } of done.toReversed()) renameFile(dir, { from: to, to: from });
}

function renameFile(dir: string, { from, to }: Renaming): NotRenamed | undefined {
  const [source, target] = [path.join(dir, from), path.join(dir, to)];
  return onMachine("rename", source, () => {
    for (const file of [source, target]) refuseOutside(dir, file);
    if (!fs.lstatSync(source, { throwIfNoEntry: false })?.isFile())
      return { because: "gone", file: from } as const;
    try {
      giveName(source, target);
    } catch (cause) {
      if (errorCode(cause) === "EEXIST") return { because: "taken", file: to } as const;
      throw cause;
    }
    fs.unlinkSync(source);
    return undefined;
  });
}

/** Takes files out of an archive for good. */
import fs from "node:fs";
import path from "node:path";
import { liesOutside } from "../disk/give-name.ts";
import { onMachine } from "../disk/machine-error.ts";

/**
 * Removes files of an archive; where one is a link, the link alone goes.
 *
 * @returns those that are there still, since a link leads their folder out of the archive
 * @throws MachineError where the disk or a permission fails; those before it are gone then
 */
export function removeFiles(dir: string, files: readonly string[]): readonly string[] {
  return files.filter((file) => {
    const place = path.join(dir, file);
    return onMachine("remove", place, () => {
      if (!fs.lstatSync(place, { throwIfNoEntry: false })) return false;
      if (liesOutside(dir, place)) return true;
      fs.unlinkSync(place);
      return false;
    });
  });
}

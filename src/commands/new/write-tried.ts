/** Writes a new record once it was tried: what the checks say of it is told, and whoever is there is asked. */

import { type NewFile, writeNew } from "../../archive/write-new.ts";
import type { Prompts } from "../../asking/prompts.ts";
import { makeVisible } from "../../reporting/visible.ts";
import { exitCodes, WrongUsage } from "../failure.ts";
import { whyNotDone } from "../not-done.ts";
import { tellTried, tryNew } from "./try-new.ts";

/**
 * Writes a new record, over none that is there. One that would bring an error into the archive is not written.
 *
 * @param told what is shown of it first
 * @param prompts asks whether to write it; undefined where that is settled
 */
export async function writeTried(
  dir: string,
  file: NewFile,
  told: readonly string[],
  prompts: Prompts | undefined,
): Promise<number> {
  const problems = tryNew(dir, [file]);
  const words = tellTried(problems);
  if (problems.some(({ severity }) => severity === "error"))
    throw new WrongUsage(["Nothing was written.", ...words].join("\n"));
  if (prompts) {
    prompts.tell([`${file.path} will say:`, String(file.content).trimEnd()].join("\n"));
    prompts.tell([...told, ...words].join("\n"));
    if (!(await prompts.agree("Write it?"))) {
      console.error("Nothing was written.");
      return exitCodes.done;
    }
  } else for (const line of [...told, ...words]) console.error(makeVisible(line));
  const inTheWay = writeNew(dir, [file]);
  if (inTheWay) throw new WrongUsage(`Nothing was written: ${whyNotDone(inTheWay)}.`);
  console.error(`Written: ${file.path}`);
  return exitCodes.done;
}

/** Everything that `check` finds in an archive; an editor is told the same. */
import { findLongWaiting } from "../../checks/long-waiting.ts";
import { type Examined, examineArchive } from "../examine/examine.ts";
import type { Progress } from "../progress.ts";

/**
 * Examines a whole archive, and finds what waited too long as of today.
 *
 * @param unsaved files as they are in an editor, by their paths in the archive
 */
export async function examineToCheck(
  dir: string,
  cacheDir: string,
  progress: Progress,
  unsaved?: ReadonlyMap<string, string>,
): Promise<Pick<Examined, "read" | "problems" | "pictures">> {
  const examined = await examineArchive(dir, cacheDir, progress, "opened", unsaved);
  const { read, problems, pictures } = examined;
  progress.finish();
  const waiting = read.archive ? findLongWaiting(read.archive, today()) : [];
  return { read, pictures, problems: [...problems, ...waiting] };
}

export function today(): string {
  return new Date().toISOString().slice(0, 10);
}

/** Removing the folders of tests, which must not fail a test that has passed. */
import { rmSync } from "node:fs";
import { rm } from "node:fs/promises";

/**
 * Some disks keep a name for a moment after its file was closed, and a program that was killed may
 * still write one: then it is tried again for a while.
 */
const patiently = { recursive: true, force: true, maxRetries: 5, retryDelay: 100 } as const;

export function removeFolder(folder: string): Promise<void> {
  return rm(folder, patiently);
}

/** The same where nothing can be waited for. */
export function removeFolderNow(folder: string): void {
  rmSync(folder, patiently);
}

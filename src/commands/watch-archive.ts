/** Watches an archive's files, those included that are made while it is watched. */
import { type FSWatcher, watch } from "node:fs";
import { join } from "node:path";

const watched = ["tiles", "recipes", "studio.yaml"];

/** How long nothing may have changed before it is told, in milliseconds. */
const quietMs = 150;

/**
 * Calls back once for a burst of changes, and never while the last call still runs.
 *
 * @param changed must not reject
 * @param failed is told of what cannot be watched; the rest is watched on
 * @returns ends the watching
 */
export function watchArchive(
  archive: string,
  changed: () => Promise<void>,
  failed: (path: string, error: unknown) => void,
): () => void {
  const watchers = new Map<string, FSWatcher>();
  const soon = waitForQuiet(changed);
  const begin = (name: string, onChange: (name: string | null) => void) => {
    const path = join(archive, name);
    watchers.get(name)?.close();
    watchers.delete(name);
    try {
      const watcher = watch(path, { recursive: name !== "" }, (_, file) => onChange(file));
      watcher.on("error", (error) => failed(path, error));
      watchers.set(name, watcher);
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== "ENOENT") failed(path, error);
    }
  };
  // What comes into being, or takes the place of what was watched, is seen in the folder around it.
  begin("", (name) => {
    if (name === null || !watched.includes(name)) return;
    begin(name, soon);
    soon();
  });
  for (const name of watched) begin(name, soon);
  return () => {
    for (const watcher of watchers.values()) watcher.close();
  };
}

function waitForQuiet(changed: () => Promise<void>): () => void {
  let timer: NodeJS.Timeout | undefined;
  let running = Promise.resolve();
  return () => {
    clearTimeout(timer);
    timer = setTimeout(() => {
      running = running.then(changed);
    }, quietMs);
  };
}

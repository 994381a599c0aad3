/**
 * Watches an archive's files, those included that are made while it is watched. Each folder is watched
 * for itself: what a system offers for whole trees misses folders that are made, renamed or replaced.
 */
import { type FSWatcher, readdirSync, statSync, watch } from "node:fs";
import { join } from "node:path";
import { hasCode } from "../../disk/machine-error.ts";
import { isPassedOver } from "../../reader/passed-over.ts";
import { idKey } from "../../terms/ids.ts";

/** What of the archive's own folder is looked at, however it is spelt. */
const watched = ["tiles", "recipes", "pages", "studio.yaml"];

/** What may be the studio's mark, beside studio.yaml. */
const mark = /\.(?:svg|png)$/iu;

/** How long nothing may have changed before it is told, and how long it is waited for, in milliseconds. */
const [quietMs, longestMs] = [60, 1000];

export interface Watching {
  /** Whether something changed that was not told yet. */
  readonly isUntold: () => boolean;
  readonly end: () => void;
}

/**
 * Calls back once for a burst of changes.
 *
 * @param failed is told of what cannot be watched; the rest is watched on
 */
export function watchArchive(
  archive: string,
  changed: () => void,
  failed: (path: string, error: unknown) => void,
): Watching {
  const burst = waitForQuiet(() => {
    // Watched before it is read: whatever changes after that is told again.
    folders.look();
    changed();
  });
  const onChange = (folder: string, name: string | null) => {
    if (name !== null && isPassedOver(name)) return;
    const isOfArchive = folder !== "" || name === null || watched.includes(idKey(name));
    if (isOfArchive || mark.test(name)) burst.more();
  };
  const folders = watchFolders(archive, onChange, failed);
  folders.look();
  return {
    isUntold: burst.isWaiting,
    end() {
      burst.end();
      folders.end();
    },
  };
}

/** A folder that is watched, and the number by which the disk knows it. */
interface Watched {
  readonly number: number;
  readonly watcher: FSWatcher;
}

/** Watches the folders that there are whenever it looks; one that took another's place is watched anew. */
function watchFolders(
  archive: string,
  onChange: (folder: string, name: string | null) => void,
  failed: (path: string, error: unknown) => void,
) {
  const known = new Map<string, Watched>();
  const forget = (folder: string) => {
    known.get(folder)?.watcher.close();
    known.delete(folder);
  };
  const begin = (folder: string, number: number) => {
    const path = join(archive, folder);
    const unlessGone = (error: unknown) => {
      forget(folder);
      if (!hasCode(error, "ENOENT", "ENOTDIR", "EPERM")) failed(path, error);
    };
    try {
      const watcher = watch(path, (_, name) => onChange(folder, name));
      known.set(folder, { number, watcher });
      watcher.on("error", unlessGone);
    } catch (error) {
      unlessGone(error);
    }
  };
  return {
    look() {
      const found = numbersOfFolders(archive);
      for (const [folder, { number }] of known) if (found.get(folder) !== number) forget(folder);
      for (const [folder, number] of found) if (!known.has(folder)) begin(folder, number);
    },
    end() {
      for (const folder of [...known.keys()]) forget(folder);
    },
  };
}

/** The folders of an archive, as paths in it, with the number of each on the disk. */
function numbersOfFolders(archive: string): ReadonlyMap<string, number> {
  const inside = listFolders(archive, "").filter((name) => watched.includes(idKey(name)));
  const all = ["", ...inside.flatMap((folder) => [folder, ...foldersBelow(archive, folder)])];
  return new Map(
    all.flatMap((folder) => {
      const found = statSync(join(archive, folder), { throwIfNoEntry: false });
      return found ? [[folder, found.ino] as const] : [];
    }),
  );
}

/** As deep as strange pictures are looked for. */
function foldersBelow(archive: string, folder: string, depth = 0): readonly string[] {
  if (depth === deepest) return [];
  return listFolders(archive, folder).flatMap((name) => {
    const below = `${folder}/${name}`;
    return [below, ...foldersBelow(archive, below, depth + 1)];
  });
}

const deepest = 16;

function listFolders(archive: string, folder: string): readonly string[] {
  try {
    return readdirSync(join(archive, folder), { withFileTypes: true })
      .filter((entry) => entry.isDirectory() && !isPassedOver(entry.name))
      .map(({ name }) => name);
  } catch {
    // It is gone meanwhile, or may not be read, which the reader tells.
    return [];
  }
}

function waitForQuiet(told: () => void) {
  let timer: NodeJS.Timeout | undefined;
  let since: number | undefined;
  const tell = () => {
    since = undefined;
    told();
  };
  return {
    isWaiting: () => since !== undefined,
    more() {
      const now = performance.now();
      since ??= now;
      clearTimeout(timer);
      timer = setTimeout(tell, Math.max(0, Math.min(quietMs, since + longestMs - now)));
    },
    end: () => clearTimeout(timer),
  };
}

/**
 * Photographs that wait to be named. They lie in a folder for temporary files on this computer, scrubbed
 * already, and never in the archive; each goes when it is written or thrown away, and all go when the
 * command stops.
 */
import { randomBytes } from "node:crypto";
import { readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { makeOwnedFolder, type OwnedFolder, removeAbandoned } from "../../disk/owned-folder.ts";
import { largestContactSheet, mostOnContactSheet } from "../../terms/limits.ts";

export interface Kept {
  readonly id: string;
  /** The file's name, as the camera gave it. */
  readonly name: string;
  /** The end of its name, which its bytes ask for: `jpg`. */
  readonly ending: string;
  /** WebP. */
  readonly small: Uint8Array;
  /** What the QR codes in it say, word for word. */
  readonly codes: readonly string[];
}

/** A photograph that was written as a tile's result: it says where in the order the others belong. */
export interface Named {
  readonly name: string;
  readonly code: string;
}

export interface Tray {
  /** @returns why it is not kept, in a sentence; undefined where it is */
  readonly keep: (photograph: Omit<Kept, "id">, bytes: Uint8Array) => Promise<string | undefined>;
  /** All of them, in the order in which they came. */
  readonly all: () => readonly Kept[];
  /** Those of this sheet that were written, until the sheet is empty. */
  readonly named: () => readonly Named[];
  readonly find: (id: string) => Kept | undefined;
  /** Its bytes; undefined where its file is gone. */
  readonly read: (id: string) => Promise<Uint8Array | undefined>;
  /** @param as the code it was written under, as a result */
  readonly takeOff: (id: string, as?: string) => Promise<void>;
  /** Removes all that is kept, and the folder. */
  readonly close: () => Promise<void>;
}

const prefixIn = (folder: string) => join(folder, "tilebook-photographs-");

/** @param folder where folders for a while are made */
export function openTray(folder: string = tmpdir()): Tray {
  const kept = new Map<string, Kept & { readonly bytes: number }>();
  let named: readonly Named[] = [];
  let owned: Promise<OwnedFolder> | undefined;
  const fileOf = async (id: string) => {
    owned ??= makeOwnedFolder(prefixIn(folder));
    return join((await owned).folder, id);
  };
  return {
    async keep(photograph, bytes) {
      const all = [...kept.values()].reduce((sum, each) => sum + each.bytes, bytes.length);
      if (kept.size >= mostOnContactSheet || all > largestContactSheet) return fullWords(kept.size);
      const id = randomBytes(12).toString("hex");
      // Whoever else uses this computer has no business with them.
      await writeFile(await fileOf(id), bytes, { flag: "wx", mode: 0o600 });
      kept.set(id, { ...photograph, id, bytes: bytes.length });
      return undefined;
    },
    all: () => [...kept.values()],
    named: () => named,
    find: (id) => kept.get(id),
    async read(id) {
      return kept.has(id) ? readFile(await fileOf(id)).catch(() => undefined) : undefined;
    },
    async takeOff(id, as) {
      const photograph = kept.get(id);
      if (!photograph) return;
      kept.delete(id);
      if (as !== undefined) named = [...named, { name: photograph.name, code: as }];
      if (kept.size === 0) named = [];
      await rm(await fileOf(id), { force: true });
    },
    async close() {
      kept.clear();
      const made = owned;
      owned = undefined;
      await (await made)?.remove();
    },
  };
}

function fullWords(number: number): string {
  return `${number} photographs lie here already, and no more fit. Write them or throw them away first.`;
}

/** Removes what a command left that was ended before it could. */
export async function removeLeftTrays(folder: string = tmpdir()): Promise<void> {
  // What cannot be removed belongs to somebody else.
  await removeAbandoned(prefixIn(folder), async () => true).catch(() => undefined);
}

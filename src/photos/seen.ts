import { existsSync } from "node:fs";
import { readFile, stat } from "node:fs/promises";
import { join, resolve } from "node:path";
import { largestPicture } from "../terms/limits.ts";
import { tooHeavyFault } from "./fault.ts";
import { readJson, writeWhole } from "./files.ts";
import { type Inspection, inspectPicture } from "./inspect.ts";
import { inParallel } from "./parallel.ts";
import { hashOf } from "./recipe.ts";

/** A photograph as it was when last looked at. */
export interface Seen {
  hash: string;
  inspection: Inspection;
}

/** Remembers photographs by path, size and times, so that an unchanged one is not read again. */
export interface SeenPictures {
  /** Gives what a file is, and its bytes where they had to be read. */
  look(path: string): Promise<Seen & { bytes?: Uint8Array }>;
  /** Writes down what was seen. */
  save(): Promise<void>;
}

interface Remembered extends Seen {
  signature: string;
}

/** Raised when inspecting finds more or other things than before. */
const VERSION = 2;

/** A file changed this short a time ago may change again without its time telling so. */
const SETTLING_MILLISECONDS = 2000;

interface SeenFile {
  version: number;
  pictures: Record<string, Remembered>;
}

export async function openSeen(cacheDir: string): Promise<SeenPictures> {
  const file = seenFile(cacheDir);
  const known = await readKnown(file);
  let changed = false;
  return {
    async look(path) {
      const { signature, settled, size } = await readSignature(path);
      const remembered = known.get(resolve(path));
      if (remembered?.signature === signature) return remembered;
      if (size > largestPicture)
        return { hash: hashOf(""), inspection: { fault: tooHeavyFault(size) } };
      const bytes = await readFile(path);
      const seen = { hash: hashOf(bytes), inspection: await inspectPicture(bytes) };
      if (settled) known.set(resolve(path), { signature, ...seen });
      else known.delete(resolve(path));
      changed = true;
      return { ...seen, bytes };
    },
    async save() {
      if (!changed) return;
      await writeKnown(file, known);
    },
  };
}

/** Drops what is remembered of photographs that are no longer where they were. */
export async function forgetMissing(cacheDir: string): Promise<void> {
  const file = seenFile(cacheDir);
  const known = await readKnown(file);
  const present = [...known].filter(([path]) => existsSync(path));
  if (present.length < known.size) await writeKnown(file, new Map(present));
}

function seenFile(cacheDir: string): string {
  return join(cacheDir, "pictures", "seen.json");
}

async function writeKnown(file: string, known: Map<string, Remembered>): Promise<void> {
  const content: SeenFile = { version: VERSION, pictures: Object.fromEntries(known) };
  await writeWhole(file, JSON.stringify(content));
}

async function readKnown(file: string): Promise<Map<string, Remembered>> {
  const content = (await readJson(file)) as SeenFile | undefined;
  return new Map(content?.version === VERSION ? Object.entries(content.pictures) : []);
}

async function readSignature(
  path: string,
): Promise<{ signature: string; settled: boolean; size: number }> {
  const { size, ino, mtimeMs, ctimeMs } = await stat(path);
  return {
    size,
    signature: [size, ino, mtimeMs, ctimeMs].join(" "),
    settled: Date.now() - Math.max(mtimeMs, ctimeMs) > SETTLING_MILLISECONDS,
  };
}

/**
 * Inspects photographs without decoding them; what is remembered is not read again. Results come in
 * the order of the sources.
 */
export async function inspectPictures(
  sources: readonly { key: string; path: string }[],
  { cacheDir }: { cacheDir: string },
): Promise<({ key: string } & Inspection)[]> {
  const seen = await openSeen(cacheDir);
  try {
    return await inParallel(sources, 4, async ({ key, path }) => ({
      key,
      ...(await seen.look(path)).inspection,
    }));
  } finally {
    await seen.save();
  }
}

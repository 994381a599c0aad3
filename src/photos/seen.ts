import { readFile, stat } from "node:fs/promises";
import { join, resolve } from "node:path";
import { largestPicture } from "../terms/limits.ts";
import { tooHeavyFault } from "./fault.ts";
import { hashOf } from "./hash.ts";
import { type Inspection, inspectPicture } from "./inspect.ts";
import { readSealed, writeSealed } from "./sealed.ts";

/** A photograph as it was when last looked at. */
export interface Seen {
  readonly hash: string;
  readonly inspection: Inspection;
}

/** Remembers photographs by path, size and times, so that an unchanged one is not read again. */
export interface SeenPictures {
  /** Gives what a file is, and its bytes where they had to be read. */
  look(path: string): Promise<Seen & { bytes?: Uint8Array }>;
  /** Writes down what was seen. */
  save(): Promise<void>;
}

interface Remembered extends Seen {
  readonly signature: string;
  /** The day it was last looked at, counted from 1970. */
  readonly day: number;
}

/** A file changed this short a time ago may change again without its time telling so. */
const settlingMilliseconds = 2000;

/** What nobody looked at for so many days is forgotten. */
const keptDays = 30;

const about = "pictures that were seen";

/** What is known, by the sums of the pictures' paths: no name of a file is remembered. */
type Known = Map<string, Remembered>;

export async function openSeen(cacheDir: string): Promise<SeenPictures> {
  const file = join(cacheDir, "pictures", "seen.json");
  const known = await readKnown(file);
  const today = Math.floor(Date.now() / 86_400_000);
  let changed = false;
  return {
    async look(path) {
      const { signature, settled, size } = await readSignature(path);
      const key = hashOf(resolve(path));
      const remembered = known.get(key);
      if (remembered?.signature === signature) {
        changed ||= remembered.day !== today;
        known.set(key, { ...remembered, day: today });
        return remembered;
      }
      if (size > largestPicture)
        return { hash: hashOf(""), inspection: { fault: tooHeavyFault(size) } };
      const bytes = await readFile(path);
      const seen = { hash: hashOf(bytes), inspection: await inspectPicture(bytes) };
      if (settled) known.set(key, { signature, day: today, ...seen });
      else known.delete(key);
      changed = true;
      return { ...seen, bytes };
    },
    async save() {
      if (!changed) return;
      const kept = [...known].filter(([, { day }]) => today - day <= keptDays);
      await writeSealed(file, about, kept);
    },
  };
}

async function readKnown(file: string): Promise<Known> {
  const remembered = await readSealed(file, about);
  return new Map(remembered.state === "sound" ? (remembered.value as [string, Remembered][]) : []);
}

async function readSignature(
  path: string,
): Promise<{ signature: string; settled: boolean; size: number }> {
  const { size, ino, mtimeMs, ctimeMs } = await stat(path);
  return {
    size,
    signature: [size, ino, mtimeMs, ctimeMs].join(" "),
    settled: Date.now() - Math.max(mtimeMs, ctimeMs) > settlingMilliseconds,
  };
}

/**
 * A cache in a folder. What is remembered is spread over 256 files by the beginning of its hash,
 * so that an edit rewrites one of them. A damaged file is forgotten and written anew.
 */
import { createHash } from "node:crypto";
import fs from "node:fs";
import path from "node:path";
import { onMachine } from "../disk/machine-error.ts";
import type { ParsedText } from "../reader/parsed-text.ts";
import type { ParseCache } from "./parse-cache.ts";

type Entries = Map<string, ParsedText>;

interface Shard {
  /** What the file held when it was opened. */
  readonly stored: Entries;
  /** What was asked for or put since. */
  readonly used: Entries;
  changed: boolean;
}

/**
 * Opens the cache in `parsed/` of a folder, which need not exist.
 *
 * @throws MachineError, when it is saved, where the folder cannot be written
 */
export function folderCache(dir: string): ParseCache {
  const folder = path.join(dir, "parsed");
  const shards = new Map<string, Shard>();
  const shardOf = (hash: string): Shard => {
    const name = hash.slice(0, 2);
    const shard = shards.get(name) ?? openShard(path.join(folder, name));
    shards.set(name, shard);
    return shard;
  };
  return {
    get: (hash) => {
      const { stored, used } = shardOf(hash);
      const parsed = stored.get(hash);
      if (parsed) used.set(hash, parsed);
      return parsed;
    },
    put: (hash, parsed) => {
      const shard = shardOf(hash);
      shard.used.set(hash, parsed);
      shard.changed = true;
    },
    save: () => {
      for (const [name, shard] of shards) saveShard(path.join(folder, name), shard);
    },
  };
}

function openShard(file: string): Shard {
  return { stored: readEntries(file), used: new Map(), changed: false };
}

/** A file's first line is the hash of the rest. */
function readEntries(file: string): Entries {
  try {
    const [hash, content = ""] = splitOnce(fs.readFileSync(file, "utf8"));
    return hash === hashOf(content) ? new Map(JSON.parse(content)) : new Map();
  } catch {
    // Missing, unreadable or damaged: what is not remembered is read again.
    return new Map();
  }
}

function saveShard(file: string, { stored, used, changed }: Shard): void {
  if (!changed && used.size === stored.size) return;
  const content = JSON.stringify([...used]);
  onMachine("write", file, () => {
    fs.mkdirSync(path.dirname(file), { recursive: true });
    const unfinished = `${file}.${process.pid}`;
    fs.writeFileSync(unfinished, `${hashOf(content)}\n${content}`);
    fs.renameSync(unfinished, file);
  });
}

function splitOnce(text: string): [string, string] {
  const end = text.indexOf("\n");
  return [text.slice(0, end), text.slice(end + 1)];
}

function hashOf(text: string): string {
  return createHash("sha256").update(text).digest("hex");
}

/**
 * A key that this computer's user alone has. What was remembered in an archive's folder is believed
 * only where it bears a seal made with it: an archive, and whatever lies in it, may come from anyone.
 */
import { createHmac, randomBytes, timingSafeEqual } from "node:crypto";
import fs from "node:fs";
import path from "node:path";
import { ownFolder } from "./own-folder.ts";
import { writeWhole } from "./write-whole.ts";

const keyBytes = 32;

/** The keys that this process has used, by the file they lie in. */
const keys = new Map<string, Buffer>();

/**
 * The seal of a text, in hexadecimal digits. Where the key cannot be kept, each process has its own:
 * nothing that was left earlier is believed then, and everything is made anew.
 */
export function sealOf(content: string): string {
  return createHmac("sha256", ownKey()).update(content).digest("hex");
}

/** Whether a seal is the content's own. */
export function isSealed(content: string, seal: string): boolean {
  const [own, found] = [Buffer.from(sealOf(content)), Buffer.from(seal)];
  return own.length === found.length && timingSafeEqual(own, found);
}

function ownKey(): Buffer {
  const file = path.join(ownFolder(), "key");
  const key = keys.get(file) ?? readKey(file) ?? makeKey(file);
  keys.set(file, key);
  return key;
}

function readKey(file: string): Buffer | undefined {
  try {
    const key = fs.readFileSync(file);
    return key.length === keyBytes ? key : undefined;
  } catch {
    // Missing or unreadable: another is made.
    return undefined;
  }
}

/** Two programs at once may each make one: the last that was put there serves both. */
function makeKey(file: string): Buffer {
  const key = randomBytes(keyBytes);
  try {
    fs.mkdirSync(path.dirname(file), { recursive: true, mode: 0o700 });
    writeWhole(file, key, { mode: 0o600 });
    return readKey(file) ?? key;
  } catch {
    // A home that cannot be written, as on many build servers.
    return key;
  }
}

/**
 * What this computer's user made with Tilebook, noted where no archive and no site can reach: a site
 * that is found again may come from anyone, so what is carried over from it must be noted here.
 */
import fs from "node:fs";
import path from "node:path";
import { ownFolder } from "./own-folder.ts";

const day = 24 * 60 * 60 * 1000;

/** Notes that nobody asked for in so many days are thrown away. */
const keptDays = 60;

function notesFolder(): string {
  return path.join(ownFolder(), "made");
}

/**
 * Notes that something was made here. Where nothing can be noted, as in a home that cannot be
 * written, it will be made anew.
 *
 * @param sum the SHA-256 of what was made and of what it was made of, in hexadecimal digits
 */
export function noteMade(sum: string): void {
  const folder = notesFolder();
  try {
    fs.mkdirSync(folder, { recursive: true, mode: 0o700 });
    throwAwayOld(folder);
    fs.writeFileSync(path.join(folder, sum), "");
  } catch {
    // Nothing is lost but time.
  }
}

/** Whether something was noted as made here; asking keeps the note. */
export function isNoted(sum: string): boolean {
  const now = new Date();
  try {
    fs.utimesSync(path.join(notesFolder(), sum), now, now);
    return true;
  } catch {
    return false;
  }
}

function throwAwayOld(folder: string): void {
  const oldest = Date.now() - keptDays * day;
  for (const name of fs.readdirSync(folder)) {
    const note = path.join(folder, name);
    if (/^[0-9a-f]{64}$/u.test(name) && fs.statSync(note).mtimeMs < oldest) fs.rmSync(note);
  }
}

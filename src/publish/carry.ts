/**
 * Writing the files of a new site: what has not changed is carried over from the last one. All of it
 * waits for the disk, which for thousands of small files is much quicker than to ask for each and be
 * called back.
 */
import {
  copyFileSync,
  linkSync,
  lstatSync,
  mkdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { dirname, join } from "node:path";
import { hasCode } from "../disk/machine-error.ts";
import type { Ledger } from "./ledger.ts";
import type { Target } from "./staging.ts";
import { sumOf } from "./sum.ts";

/** Where a site is made, and what is remembered of the last. */
export interface Place extends Target {
  readonly ledger: Ledger;
}

/** Hard-links a file into the new site, or copies it where the disk cannot link. */
export function linkInto(from: string, to: string): void {
  try {
    withFolder(to, () => linkSync(from, to));
  } catch (error) {
    if (hasCode(error, "ENOENT", "ENOSPC")) throw error;
    rmSync(to, { force: true });
    copyFileSync(from, to);
  }
}

/** Does something to a file, and makes its folder first where there is none. */
function withFolder(file: string, work: () => void): void {
  try {
    work();
  } catch (error) {
    if (!hasCode(error, "ENOENT")) throw error;
    mkdirSync(dirname(file), { recursive: true });
    work();
  }
}

/**
 * Carries a file over if the last site has it as it was made of the same. What was linked is looked
 * at, not what was there before, since another build may put its own site there at any moment.
 *
 * @param key the sum of all that it is made of
 */
export function carryUnchanged(place: Place, path: string, key: string): boolean {
  if (place.ledger.find(path)?.key !== key) return false;
  return carryIf(place, path, (file) => place.ledger.keeps(path, file));
}

/**
 * Carries a file over if the last site has it with the same bytes, so that one that somebody edited by
 * hand is made anew.
 *
 * @param key the sum of all that it is made of; of its bytes where nothing is said
 */
export function carryOver(
  place: Place,
  path: string,
  content: string | Uint8Array,
  key = sumOf(content),
): boolean {
  const { ledger } = place;
  const sum = sumOf(content);
  const known = ledger.find(path);
  const isCarried = carryIf(place, path, (file) =>
    known?.sum === sum ? ledger.keeps(path, file) : holds(file, Buffer.from(content)),
  );
  if (isCarried && (known?.sum !== sum || known.key !== key))
    ledger.note(path, { key, sum, words: "" });
  return isCarried;
}

function carryIf({ folder, last }: Place, path: string, isGood: (file: string) => boolean) {
  if (last === null) return false;
  const file = join(folder, path);
  try {
    linkInto(join(last, path), file);
  } catch (error) {
    if (hasCode(error, "ENOENT", "ENOTDIR", "EISDIR", "EPERM", "ELOOP")) return false;
    throw error;
  }
  if (isGood(file)) return true;
  rmSync(file, { recursive: true, force: true });
  return false;
}

/** Whether a file is one of its own, no link to another, and holds these bytes. */
function holds(file: string, content: Buffer): boolean {
  const found = lstatSync(file);
  return found.isFile() && found.size === content.length && readFileSync(file).equals(content);
}

/** Writes a file, or carries it over unchanged. */
export function writeOrCarry(
  place: Place,
  path: string,
  content: string | Uint8Array,
  key = sumOf(content),
): void {
  if (carryOver(place, path, content, key)) return;
  const file = join(place.folder, path);
  // Never into a file that is there already: it might be the last site's as well.
  withFolder(file, () => writeFileSync(file, content, { flag: "wx" }));
  place.ledger.note(path, { key, sum: sumOf(content), words: "" });
}

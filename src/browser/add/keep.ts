/**
 * What outlives a closed tab: the text of a draft, kept at every stroke, and its photograph, which is too
 * large to be kept beside it. Of tiles that were handed in only their codes stay, so that the next pupil
 * at this tablet is offered another.
 */
import { del, get, set } from "idb-keyval";
import { type Draft, keepable, readDraft } from "./draft.ts";

/** Sites may share a host, and so what a browser keeps for it: each has names of its own. */
const here = `tilebook-form ${location.pathname}`;
const names = { draft: here, codes: `${here} codes`, set: `${here} set`, photo: `${here} photo` };

/** So many codes are remembered: several classes' of a term. */
const mostCodes = 500;

/** False where this browser keeps nothing. */
export function keepDraft(draft: Draft): boolean {
  return write(names.draft, keepable(draft));
}

/** What was kept; `unreadable` where something was that is no draft. */
export function findDraft(): Draft | "unreadable" | undefined {
  const kept = read(names.draft);
  return kept === null ? undefined : (readDraft(kept) ?? "unreadable");
}

export async function keepPhotograph(jpeg: Blob): Promise<boolean> {
  try {
    await set(names.photo, jpeg);
    return true;
  } catch {
    return false;
  }
}

export async function findPhotograph(): Promise<Blob | undefined> {
  try {
    const kept: unknown = await get(names.photo);
    return kept instanceof Blob ? kept : undefined;
  } catch {
    return undefined;
  }
}

export async function forgetPhotograph(): Promise<void> {
  try {
    await del(names.photo);
  } catch {
    // Nothing is kept where the browser keeps nothing.
  }
}

/** Leaves nothing that the next pupil could see. */
export async function forgetDraft(): Promise<void> {
  remove(names.draft);
  await forgetPhotograph();
}

/** The codes that were handed in from this device. */
export function handedInHere(): readonly string[] {
  const kept = read(names.codes);
  return kept === null ? [] : kept.split("\n");
}

export function rememberHandedIn(code: string): void {
  const codes = handedInHere().filter((each) => each !== code);
  write(names.codes, [...codes, code].slice(-mostCodes).join("\n"));
}

/** The set of the last tile: most often that of the next. */
export function lastSet(): string | null {
  return read(names.set);
}

export function rememberSet(id: string): void {
  write(names.set, id);
}

function read(name: string): string | null {
  try {
    return localStorage.getItem(name);
  } catch {
    return null;
  }
}

function write(name: string, value: string): boolean {
  try {
    localStorage.setItem(name, value);
    return true;
  } catch {
    return false;
  }
}

function remove(name: string): void {
  try {
    localStorage.removeItem(name);
  } catch {
    // As above.
  }
}

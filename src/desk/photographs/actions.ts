/** Takes photographs in, names them, and throws them away. */
import { fieldsOf, unreadable } from "../../local-server/body.ts";
import { findById, type PictureRole } from "../../records/archive.ts";
import { mostOnContactSheet } from "../../terms/limits.ts";
import type { Written } from "../types.ts";
import type { DeskWork } from "../work.ts";
import { placeOf, whyNotWritten } from "./place.ts";
import type { Handed, PhotographView, WriteRequest } from "./types.ts";
import { viewSheet } from "./view.ts";
import { roleWords } from "./words.ts";

/** Letters of a file's name. What tells one from the next is at its end. */
const longestName = 80;

/** Takes one photograph onto the sheet: scrubbed, looked at, and not into the archive. */
export async function addAction(of: string, bytes: Uint8Array, work: DeskWork): Promise<Handed> {
  const taken = await work.takeIn(bytes);
  if ("why" in taken) return { kept: false, words: taken.why };
  const contact = await work.contact(taken.bytes);
  if ("why" in contact) return { kept: false, words: contact.why };
  const why = await work.tray.keep(
    { name: readName(of), ending: taken.ending, small: contact.small, codes: contact.codes },
    taken.bytes,
  );
  return { kept: why === undefined, words: why ?? "" };
}

/** A name is only shown: no file is called by it. It stands encoded in the address, behind a word. */
function readName(of: string): string {
  try {
    const name = decodeURIComponent(of.replace(/^name-/u, ""));
    const plain = name.replace(/[\p{Cc}\p{Cf}\u2028\u2029]+/gu, " ").trim();
    return [...plain].slice(-longestName).join("") || "a photograph";
  } catch {
    throw unreadable();
  }
}

/** The whole sheet as it is now, with what is proposed. */
export async function sheetAction(
  body: unknown,
  work: DeskWork,
): Promise<{ readonly photographs: readonly PhotographView[] }> {
  const { of } = fieldsOf(body);
  const order = of === null ? null : text(of);
  return { photographs: viewSheet(await work.read(), work.tray, order) };
}

/** Writes one photograph beside its tile's record, turned if somebody asked, and over none that is there. */
export async function writeAction(body: unknown, work: DeskWork): Promise<Written> {
  const { id, code, role, turning } = parseWrite(body);
  const kept = work.tray.find(id);
  const bytes = await work.tray.read(id);
  if (!kept || !bytes)
    return nothing("This photograph does not lie here any more. Choose its file again.");
  const desk = await work.read();
  const why = whyNotWritten(desk, code, role);
  const tile = findById(desk.archive.tiles, code);
  if (why !== undefined || !tile) return nothing(why ?? `There is no tile “${code}”.`);
  const turned = turning === 0 ? { bytes, ending: kept.ending } : await work.turn(bytes, turning);
  if ("why" in turned) return nothing(`It was not turned, and not written. ${turned.why}`);
  const path = placeOf(tile, role, turned.ending);
  const written = await work.writeNew([{ path, content: turned.bytes }]);
  if (written.written) await work.tray.takeOff(id, role === "result" ? tile.id : undefined);
  return written;
}

/** Throws photographs away that wait to be named; those in the archive stay. */
export async function throwAwayAction(
  body: unknown,
  work: DeskWork,
): Promise<{ readonly thrownAway: number }> {
  const { ids } = fieldsOf(body);
  if (!Array.isArray(ids) || ids.length > mostOnContactSheet) throw unreadable();
  const known = ids.map(text).filter((id) => work.tray.find(id));
  for (const id of known) await work.tray.takeOff(id);
  return { thrownAway: known.length };
}

function nothing(words: string): Written {
  return { written: false, words, files: [] };
}

const turnings = [0, 90, 180, 270] as const;

function parseWrite(body: unknown): WriteRequest {
  const { id, code, role, turning } = fieldsOf(body);
  const by = turnings.find((each) => each === turning);
  if (by === undefined || typeof role !== "string" || !Object.hasOwn(roleWords, role))
    throw unreadable();
  return { id: text(id), code: text(code).trim(), role: role as PictureRole, turning: by };
}

function text(value: unknown): string {
  if (typeof value !== "string" || value.length > 200) throw unreadable();
  return value;
}

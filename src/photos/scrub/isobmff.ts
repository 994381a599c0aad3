import { largestNotes } from "../../terms/limits.ts";
import { findBox, parseIsobmff } from "../containers/isobmff.ts";
import { latin1, type Part } from "../containers/part.ts";
import { holdTo } from "../over-limit.ts";
import { blankStretches, type Stretch, stretchesBetween } from "./blank.ts";
import { type HeifMeta, readMeta } from "./heif-meta.ts";
import { neededStretches, rewriteMeta } from "./heif-rewrite.ts";
import type { Scrubbed } from "./scrubbed.ts";

/**
 * Blanks everything in an AVIF or HEIC that its first picture does not need, where it stands, and
 * takes out of its lists what belonged to it: no piece of the file moves. Their way up is a property
 * of the picture, and stays. Moving pictures, and files that do not tell plainly where their pieces
 * lie, are left as they are.
 */
export function scrubIsobmff(bytes: Uint8Array): Scrubbed {
  const { parts } = parseIsobmff(bytes);
  const box = findBox(parts, "meta");
  if (!box || parts[0]?.name !== "ftyp" || findBox(parts, "moov")) return refuse(bytes, parts);
  try {
    return blankUnneeded(bytes, parts, readMeta(bytes, box));
  } catch (error) {
    if (error instanceof RangeError) return refuse(bytes, parts);
    throw error;
  }
}

/** Nothing can be taken out; read is everything but the boxes of coded data, and those too if small. */
function refuse(bytes: Uint8Array, parts: readonly Part[]): Scrubbed {
  const large = parts.filter(({ name, start, end }) => name === "mdat" && end - start > fromLarge);
  const notes = stretchesBetween({ start: 0, end: bytes.length }, large);
  return { bytes: undefined, notes: notes.map(({ start, end }) => bytes.subarray(start, end)) };
}

const fromLarge = largestNotes / 2;

function blankUnneeded(bytes: Uint8Array, parts: readonly Part[], meta: HeifMeta): Scrubbed {
  const data = parts.filter(({ name }) => name === "mdat");
  const end = Math.max(meta.box.end, ...data.map((part) => part.end));
  const after = Buffer.from(bytes.subarray(0, end));
  const needed = neededStretches(meta, false);
  if (!needed.every((stretch) => isWithin(stretch, data))) throw new RangeError("elsewhere");
  const rewritten = rewriteMeta(bytes, meta);
  rewritten.copy(after, meta.box.start);
  plainBrands(after, parts[0]);
  const inside = parts.filter((part) => part !== parts[0] && part !== meta.box && part.end <= end);
  const blanked = inside.flatMap((part) => {
    if (part.name === "mdat") return stretchesBetween(bodyOf(part), needed);
    after.write("free", part.start + 4, "latin1");
    return [bodyOf(part)];
  });
  const notes = blankStretches(after, bytes, blanked);
  if (after.equals(bytes)) return { bytes: after, notes: [] };
  const trail = end < bytes.length ? [bytes.subarray(end)] : [];
  const changed = [bytes.subarray(meta.box.start, meta.box.end)];
  return { bytes: after, notes: [...itemNotes(bytes, meta), ...changed, ...notes, ...trail] };
}

function bodyOf({ bodyStart, bodyEnd }: Part): Stretch {
  return { start: bodyStart, end: bodyEnd };
}

const mostDataBoxes = 64;

function isWithin({ start, end }: Stretch, data: readonly Part[]): boolean {
  return (
    data.length <= mostDataBoxes &&
    data.some(({ bodyStart, bodyEnd }) => start >= bodyStart && start < end && end <= bodyEnd)
  );
}

/** An item may lie in several stretches, and a word in it be split: so each is put together. */
function itemNotes(bytes: Uint8Array, { locations, needed }: HeifMeta): Uint8Array[] {
  const foreign = locations.filter(({ id, isInIdat }) => !needed.has(id) && !isInIdat);
  const lengths = foreign.flatMap(({ extents }) => extents.map(({ start, end }) => end - start));
  const sum = lengths.reduce((all, length) => all + length, 0);
  holdTo(largestNotes, sum, "bytes beside the picture");
  return foreign.map(({ extents }) =>
    Buffer.concat(extents.map(({ start, end }) => bytes.subarray(start, end))),
  );
}

/** Kinds that a file may say it is (ISO/IEC 23008-12, annex B; AV1 Image File Format; MIAF). */
const brand =
  /^(?:mif[12]|miaf|MiH[BAEM]|MiPr|hei[cxms]|hev[cxms]|av(?:if|io|is)|MA1[AB]|msf1|iso\d|1pic|tmap|geo1|unif|\0{4})$/;

/** The version, and kinds that nobody knows, are noughts. */
function plainBrands(after: Buffer, ftyp: Part | undefined): void {
  if (!ftyp) return;
  for (let at = ftyp.bodyStart + 8; at < ftyp.end; at += 4) {
    if (!brand.test(latin1(after, at, Math.min(at + 4, ftyp.end)))) {
      after.fill(0, at, Math.min(at + 4, ftyp.end));
    }
  }
}

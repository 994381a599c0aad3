import { largestProfile, mostProfileEntries } from "../../terms/limits.ts";
import { bufferOf, latin1 } from "./part.ts";

/**
 * The tags of a colour profile that colours, or their standard names and terms, need (ICC.1:2022,
 * section 9.2, and the two that version 2 had besides: `bkpt` and `vued`). Left out are the words
 * and dates of whoever measured (`meta`, `targ`, `calt`), the chain of profiles (`pseq`, `psid`)
 * and every private tag: a screen's make and serial number among them.
 */
const neededTags = new Set([
  ...["A2B0", "A2B1", "A2B2", "B2A0", "B2A1", "B2A2", "B2D0", "B2D1", "B2D2", "B2D3"],
  ...["D2B0", "D2B1", "D2B2", "D2B3", "gamt", "pre0", "pre1", "pre2"],
  ...["rXYZ", "gXYZ", "bXYZ", "rTRC", "gTRC", "bTRC", "kTRC", "wtpt", "bkpt", "chad", "chrm"],
  ...["cicp", "lumi", "meas", "tech", "view", "vued", "rig0", "rig2", "ciis"],
  ...["desc", "cprt", "dmnd", "dmdd"],
]);

const headerLength = 128;
const table = headerLength + 4;
const id = { start: 84, end: 100 };

/**
 * A colour profile without anything that colours do not need: its length and the places of what
 * stays are the same, and all the rest is zeros.
 *
 * @returns undefined where it is no colour profile, or larger than any is
 */
export function cleanProfile(profile: Uint8Array): Buffer | undefined {
  const tags = readTags(profile);
  if (!tags) return undefined;
  const before = bufferOf(profile);
  const needed = tags.filter(({ name }) => neededTags.has(name));
  const after = Buffer.alloc(profile.length);
  before.copy(after, 0, 0, 100); // what follows in the header is reserved, and zeros
  after.writeUInt32BE(needed.length, headerLength);
  needed.forEach(({ entry, start, end }, index) => {
    before.copy(after, table + index * 12, entry, entry + 12);
    before.copy(after, start, start, end);
  });
  if (!after.equals(before)) after.fill(0, id.start, id.end); // a sum of what was there
  return after;
}

interface Tag {
  readonly name: string;
  /** Where its entry in the table stands. */
  readonly entry: number;
  readonly start: number;
  readonly end: number;
}

function readTags(profile: Uint8Array): Tag[] | undefined {
  if (profile.length < table || profile.length > largestProfile) return undefined;
  const buffer = bufferOf(profile);
  const size = buffer.readUInt32BE(0);
  const count = buffer.readUInt32BE(headerLength);
  const tableEnd = table + count * 12;
  const isProfile = latin1(profile, 36, 40) === "acsp" && size <= profile.length;
  if (!isProfile || count > mostProfileEntries || tableEnd > size) return undefined;
  const tags = Array.from({ length: count }, (_, index) => {
    const entry = table + index * 12;
    const start = buffer.readUInt32BE(entry + 4);
    const name = latin1(profile, entry, entry + 4);
    return { name, entry, start, end: start + buffer.readUInt32BE(entry + 8) };
  });
  const isInside = ({ start, end }: Tag) => start >= tableEnd && end <= size;
  return tags.every(isInside) ? tags : undefined;
}

/** Adds items to an AVIF or HEIC whose lists are of the simplest versions, as those in tests are. */
import { findBox, parseBoxes } from "../../src/photos/containers/isobmff.ts";

/**
 * Puts an item into the file: its entry into `iinf` and `iloc`, and its bytes into a box of data at
 * the end. What lies behind the lists moves, and its places are told anew.
 */
export function addHeifItem(file: Buffer, type: string, content: Buffer): Buffer {
  const top = parseBoxes(file, 0, file.length).parts;
  const meta = findBox(top, "meta");
  const inMeta = meta && parseBoxes(file, meta.bodyStart + 4, meta.end).parts;
  const [iloc, iinf] = [inMeta && findBox(inMeta, "iloc"), inMeta && findBox(inMeta, "iinf")];
  if (!meta || !inMeta || !iloc || !iinf) throw new Error("no lists");
  const words = type === "mime" ? "\0application/rdf+xml\0" : "\0";
  const infe = box("infe", Buffer.from(`\x02\0\0\0\0\x63\0\0${type}${words}`, "latin1"));
  const newIinf = counted(file.subarray(iinf.start, iinf.end), 12, infe);
  const sizes = file.readUInt16BE(iloc.bodyStart + 4);
  const version = file[iloc.bodyStart] ?? 0;
  const entry = locationEntry(sizes, version);
  const newIloc = counted(file.subarray(iloc.start, iloc.end), 14, entry.bytes);
  const shift = infe.length + entry.bytes.length;
  const children = inMeta.map((child) => {
    if (child === iinf) return newIinf;
    return child === iloc ? newIloc : file.subarray(child.start, child.end);
  });
  const head = file.subarray(meta.bodyStart, meta.bodyStart + 4);
  const newMeta = box("meta", Buffer.concat([head, ...children]));
  const before = file.subarray(0, meta.start);
  const after = file.subarray(meta.end);
  const whole = Buffer.concat([before, newMeta, after, box("mdat", content)]);
  moveExtents(whole, meta.end, shift);
  const at = whole.length - content.length;
  writeLast(whole, at, content.length, sizes);
  return whole;
}

function box(name: string, body: Buffer): Buffer {
  const head = Buffer.from(`\0\0\0\0${name}`, "latin1");
  head.writeUInt32BE(body.length + 8, 0);
  return Buffer.concat([head, body]);
}

function counted(list: Buffer, countAt: number, entry: Buffer): Buffer {
  const longer = Buffer.concat([list, entry]);
  longer.writeUInt32BE(longer.length, 0);
  longer.writeUInt16BE(longer.readUInt16BE(countAt) + 1, countAt);
  return longer;
}

/** With offsets and lengths of four bytes. */
function locationEntry(sizes: number, version: number): { bytes: Buffer } {
  const [offset, length, base] = [sizes >> 12, (sizes >> 8) & 15, (sizes >> 4) & 15];
  if (offset !== 4 || length !== 4 || version > 1) throw new Error(`sizes ${sizes.toString(16)}`);
  return {
    bytes: Buffer.concat([
      Buffer.from([0, 0x63, ...(version === 1 ? [0, 0] : []), 0, 0]),
      Buffer.alloc(base),
      Buffer.from([0, 1]),
      Buffer.alloc(8),
    ]),
  };
}

function ilocOf(file: Buffer) {
  const meta = findBox(parseBoxes(file, 0, file.length).parts, "meta");
  const iloc = meta && findBox(parseBoxes(file, meta.bodyStart + 4, meta.end).parts, "iloc");
  if (!iloc) throw new Error("no iloc");
  return iloc;
}

/** What lay behind the lists lies further back now. */
function moveExtents(file: Buffer, behind: number, shift: number): void {
  const { bodyStart } = ilocOf(file);
  const version = file[bodyStart] ?? 0;
  const base = (file.readUInt16BE(bodyStart + 4) >> 4) & 15;
  let at = bodyStart + 8;
  for (let left = file.readUInt16BE(bodyStart + 6); left > 0; left--) {
    const baseAt = at + 2 + (version === 1 ? 2 : 0) + 2;
    const count = file.readUInt16BE(baseAt + base);
    const moved = base === 4 ? file.readUInt32BE(baseAt) : 0;
    if (moved >= behind) file.writeUInt32BE(moved + shift, baseAt);
    at = baseAt + base + 2;
    for (let i = 0; i < count; i++, at += 8) {
      const offset = file.readUInt32BE(at);
      if (moved < behind && offset >= behind) file.writeUInt32BE(offset + shift, at);
    }
  }
}

function writeLast(file: Buffer, start: number, length: number, sizes: number): void {
  const { end } = ilocOf(file);
  if (sizes >> 12 !== 4) throw new Error("sizes");
  file.writeUInt32BE(start, end - 8);
  file.writeUInt32BE(length, end - 4);
}

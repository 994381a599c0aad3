import { readItems, readLocations } from "../containers/heif-items.ts";
import { cleanProfile } from "../containers/icc.ts";
import { bufferOf, latin1, type Part } from "../containers/part.ts";
import type { Stretch } from "./blank.ts";
import { stretchesBetween } from "./blank.ts";
import { type HeifMeta, keepEntries } from "./heif-meta.ts";

/**
 * The `meta` box with nothing in it that its needed items do not need, and as long as before: what
 * became free stands at its end as free space, so that no other piece of the file moves.
 */
export function rewriteMeta(bytes: Uint8Array, meta: HeifMeta): Buffer {
  const { box, boxes } = meta;
  const head = bufferOf(bytes).subarray(box.start, box.bodyStart + 4);
  const children = boxes.map((child) => rewriteChild(bytes, meta, child));
  const length = children.reduce((sum, child) => sum + child.length, head.length);
  return Buffer.concat([head, ...children, freeSpace(box.end - box.start - length)]);
}

function freeSpace(length: number): Buffer {
  if (length === 0) return Buffer.alloc(0);
  if (length < 8) throw new RangeError("no room for a box");
  return encodeBox("free", Buffer.alloc(length - 8));
}

function encodeBox(name: string, ...body: Buffer[]): Buffer {
  const head = Buffer.from(`\0\0\0\0${name}`, "latin1");
  head.writeUInt32BE(
    body.reduce((sum, { length }) => sum + length, 8),
    0,
  );
  return Buffer.concat([head, ...body]);
}

/** A file that says its data is in itself (ISO/IEC 14496-12, section 8.7.2). */
const ownData = Buffer.from(
  "0000002464696e660000001c6472656600000000000000010000000c75726c2000000001",
  "hex",
);

function rewriteChild(bytes: Uint8Array, meta: HeifMeta, child: Part): Buffer {
  const raw = Buffer.from(bytes.subarray(child.start, child.end));
  switch (child.name) {
    case "hdlr":
      return plainHandler(raw);
    case "pitm":
      return raw.length <= 16 ? raw : asFreeSpace(raw);
    case "iinf":
      return rewriteItems(bytes, meta, child);
    case "iloc":
      return rewriteLocations(bytes, meta, child);
    case "iref":
      return rewriteReferences(bytes, meta, child);
    case "iprp":
      return encodeBox("iprp", ...rewriteProperties(bytes, meta, child));
    case "idat":
      return blankIdat(raw, meta);
    default:
      return raw.equals(ownData) ? raw : asFreeSpace(raw);
  }
}

function asFreeSpace(raw: Buffer): Buffer {
  return encodeBox("free", Buffer.alloc(raw.length - 8));
}

/** Names that encoders give the handler and the items; others are blanked. */
const handlerNames = ["", "libavif", "PictureHandler"];
const itemNames = ["", "Alpha", "Color"];

function plainHandler(raw: Buffer): Buffer {
  return blankName(raw, 8 + 24, handlerNames);
}

/** Blanks a name that ends with nought, and whatever follows it, unless it is an encoder's usual one. */
function blankName(raw: Buffer, at: number, usual: readonly string[]): Buffer {
  const isUsual = usual.includes(latin1(raw, at, Math.max(at, raw.length - 1)));
  return isUsual && raw.at(-1) === 0 ? raw : raw.fill(0, Math.min(at, raw.length));
}

function isNeeded({ needed }: HeifMeta): (entry: { id: number }) => boolean {
  return ({ id }) => needed.has(id);
}

function rewriteItems(bytes: Uint8Array, meta: HeifMeta, box: Part): Buffer {
  const { items, countAt } = readItems(bytes, box);
  const kept = items.filter(isNeeded(meta));
  const pieces = kept.map(({ start, end, wordsAt }) =>
    blankName(Buffer.from(bytes.subarray(start, end)), wordsAt - start, itemNames),
  );
  return withCount(bytes, box, countAt, bytes[box.bodyStart] === 0 ? 2 : 4, pieces);
}

function rewriteLocations(bytes: Uint8Array, meta: HeifMeta, box: Part): Buffer {
  const { locations, countAt } = readLocations(bytes, box);
  const countLength = (bytes[box.bodyStart] ?? 0) < 2 ? 2 : 4;
  const kept = keepEntries(bytes, locations, isNeeded(meta));
  return withCount(bytes, box, countAt, countLength, kept);
}

/** A box that counts its entries: its head as it was, up to the new count, and the entries kept. */
function withCount(
  bytes: Uint8Array,
  box: Part,
  countAt: number,
  countLength: number,
  entries: readonly Buffer[],
): Buffer {
  const count = Buffer.alloc(countLength);
  count.writeUIntBE(entries.length, 0, countLength);
  return encodeBox(box.name, bufferOf(bytes).subarray(box.bodyStart, countAt), count, ...entries);
}

function rewriteReferences(bytes: Uint8Array, meta: HeifMeta, box: Part): Buffer {
  const kept = keepEntries(
    bytes,
    meta.references,
    ({ id, type, to }) =>
      meta.needed.has(id) &&
      ["auxl", "dimg", "prem"].includes(type) &&
      to.every((other) => meta.needed.has(other)),
  );
  const head = bufferOf(bytes).subarray(box.bodyStart, box.bodyStart + 4);
  return kept.length === 0 ? Buffer.alloc(0) : encodeBox(box.name, head, ...kept);
}

/**
 * Properties that a picture is decoded and shown by, with the most bytes each may hold (ISO/IEC
 * 23008-12, section 6.5; ISO/IEC 14496-12, section 12.1.5; AV1 Image File Format, section 2).
 */
const largestProperties: ReadonlyMap<string, number> = new Map([
  ["av1C", 4096],
  ["hvcC", 65536],
  ["colr", Number.POSITIVE_INFINITY],
  ["ispe", 12],
  ["pixi", 4 + 1 + 16],
  ["irot", 1],
  ["imir", 1],
  ["clap", 32],
  ["pasp", 8],
  ["auxC", 4 + 64],
  ["clli", 4],
  ["mdcv", 24],
  ["lsel", 2],
  ["a1op", 1],
  ["a1lx", 13],
]);

function rewriteProperties(bytes: Uint8Array, meta: HeifMeta, iprp: Part): Buffer[] {
  const used = new Set(
    meta.associations.flatMap(({ associations }) =>
      associations.filter(isNeeded(meta)).flatMap(({ properties }) => properties),
    ),
  );
  const properties = meta.properties.map((property, index) => {
    const raw = Buffer.from(bytes.subarray(property.start, property.end));
    return used.has(index + 1) ? rewriteProperty(property.name, raw) : asFreeSpace(raw);
  });
  const associations = meta.associations.map(({ box, associations: entries, countAt }) =>
    withCount(bytes, box, countAt, 4, keepEntries(bytes, entries, isNeeded(meta))),
  );
  const isFirst =
    (bytes[iprp.bodyStart + 4] ?? 0) === 0x69 &&
    latin1(bytes, iprp.bodyStart + 4, iprp.bodyStart + 8) === "ipco";
  const ipco = encodeBox("ipco", ...properties);
  return isFirst ? [ipco, ...associations] : [...associations, ipco];
}

function rewriteProperty(name: string, raw: Buffer): Buffer {
  const most = largestProperties.get(name);
  if (most === undefined || raw.length - 8 > most) return asFreeSpace(raw);
  return name === "colr" ? plainColours(raw) : raw;
}

/** Colours by number, which are seven bytes, or a colour profile. */
function plainColours(raw: Buffer): Buffer {
  const kind = raw.toString("latin1", 8, 12);
  if (kind === "nclx" && raw.length === 8 + 4 + 7) return raw;
  const clean = ["prof", "rICC"].includes(kind) && cleanProfile(raw.subarray(12));
  return clean ? Buffer.concat([raw.subarray(0, 12), clean]) : asFreeSpace(raw);
}

/** What of the data in the box itself no needed item is made of. */
function blankIdat(raw: Buffer, meta: HeifMeta): Buffer {
  const stretches = neededStretches(meta, true).map(({ start, end }) => ({
    start: start + 8,
    end: end + 8,
  }));
  for (const { start, end } of stretchesBetween({ start: 8, end: raw.length }, stretches)) {
    raw.fill(0, start, end);
  }
  return raw;
}

/** Where the bytes of the needed items lie, in the file or in the `idat` box. */
export function neededStretches({ locations, needed }: HeifMeta, isInIdat: boolean): Stretch[] {
  return locations
    .filter((location) => needed.has(location.id) && location.isInIdat === isInIdat)
    .flatMap(({ extents }) => extents);
}

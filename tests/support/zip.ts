/** Zips as a test wants them, the sound and the evil. */
import { crc32, deflateRawSync } from "node:zlib";

/** A file in a zip, and what the zip says of it. */
export interface ZipEntry {
  readonly name: string;
  readonly content: string | Uint8Array;
  /** As Unix has it: 0o120777 for a link. */
  readonly mode?: number;
  readonly isEncrypted?: boolean;
  /** How long it is said to be; as long as it is where left out. */
  readonly said?: number;
  readonly isStored?: boolean;
  /** The sum that it is said to have. */
  readonly sum?: number;
}

/** Packs files into a zip. */
export function zipOf(entries: readonly ZipEntry[]): Buffer {
  const parts: Buffer[] = [];
  const list: Buffer[] = [];
  let offset = 0;
  for (const entry of entries) {
    const { header, directory, packed } = packEntry(entry, offset);
    parts.push(header, packed);
    list.push(directory);
    offset += header.length + packed.length;
  }
  const directory = Buffer.concat(list);
  return Buffer.concat([...parts, directory, endOf(entries.length, directory.length, offset)]);
}

/** The texts of a zip by their names. */
export function zipOfTexts(texts: Readonly<Record<string, string | Uint8Array>>): Buffer {
  return zipOf(Object.entries(texts).map(([name, content]) => ({ name, content })));
}

function packEntry(entry: ZipEntry, offset: number) {
  const bytes = Buffer.from(entry.content);
  const packed = entry.isStored ? bytes : deflateRawSync(bytes);
  const name = Buffer.from(entry.name);
  const fields = Buffer.alloc(26);
  fields.writeUInt16LE(20, 0);
  fields.writeUInt16LE(0x800 | (entry.isEncrypted ? 1 : 0), 2);
  fields.writeUInt16LE(entry.isStored ? 0 : 8, 4);
  fields.writeUInt32LE(entry.sum ?? crc32(bytes), 10);
  fields.writeUInt32LE(packed.length, 14);
  fields.writeUInt32LE(entry.said ?? bytes.length, 18);
  fields.writeUInt16LE(name.length, 22);
  const header = Buffer.concat([Buffer.from("PK\x03\x04", "latin1"), fields, name]);
  const rest = Buffer.alloc(14);
  rest.writeUInt32LE(((entry.mode ?? 0o100644) << 16) >>> 0, 6);
  rest.writeUInt32LE(offset, 10);
  const made = Buffer.from([0x14, 0x03]);
  const directory = Buffer.concat([Buffer.from("PK\x01\x02", "latin1"), made, fields, rest, name]);
  return { header, directory, packed };
}

function endOf(count: number, size: number, offset: number): Buffer {
  const end = Buffer.alloc(22);
  end.write("PK\x05\x06", 0, "latin1");
  end.writeUInt16LE(count & 0xffff, 8);
  end.writeUInt16LE(count & 0xffff, 10);
  end.writeUInt32LE(size, 12);
  end.writeUInt32LE(offset, 16);
  return end;
}

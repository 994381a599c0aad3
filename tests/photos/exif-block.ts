/**
 * Assembles EXIF blocks (a TIFF 6.0 structure, Exif 2.32) by hand, since no library at hand writes
 * all of it: place, device, serial number, owner and an embedded thumbnail.
 */

type Value = { type: 2 | 3 | 4 | 5 | 7; count: number; bytes: Buffer };
export type Directory = Map<number, Value>;

export const PLANTED = {
  make: "PLANTED-MAKE",
  model: "PLANTED-MODEL",
  owner: "PLANTED-OWNER",
  serial: "PLANTED-SERIAL",
  thumbnail: "PLANTED-THUMBNAIL",
  /** Seconds of the latitude, as a rational that occurs nowhere else. */
  seconds: [0x51a7e5ec, 0x01000000],
} as const;

export function text(value: string): Value {
  const bytes = Buffer.from(`${value}\0`, "latin1");
  return { type: 2, count: bytes.length, bytes };
}

export function long(value: number): Value {
  const bytes = Buffer.alloc(4);
  bytes.writeUInt32LE(value);
  return { type: 4, count: 1, bytes };
}

export function short(...values: number[]): Value {
  const bytes = Buffer.alloc(values.length * 2);
  values.forEach((value, index) => {
    bytes.writeUInt16LE(value, index * 2);
  });
  return { type: 3, count: values.length, bytes };
}

export function rationals(...pairs: (readonly [number, number])[]): Value {
  const bytes = Buffer.alloc(pairs.length * 8);
  pairs.forEach(([above, below], index) => {
    bytes.writeUInt32LE(above, index * 8);
    bytes.writeUInt32LE(below, index * 8 + 4);
  });
  return { type: 5, count: pairs.length, bytes };
}

export function blob(bytes: Buffer): Value {
  return { type: 7, count: bytes.length, bytes };
}

/** Lays directories and their values out one after another, little-endian. */
export function buildTiff(main: Directory, exif?: Directory, gps?: Directory, next?: Directory) {
  const chunks: Buffer[] = [Buffer.from("II*\0\0\0\0\0", "latin1")];
  let length = 8;
  const append = (bytes: Buffer) => {
    const at = length;
    const padded = bytes.length % 2 ? Buffer.concat([bytes, Buffer.alloc(1)]) : bytes;
    chunks.push(padded);
    length += padded.length;
    return at;
  };
  const write = (directory: Directory, nextAt = 0) => append(layOut(directory, append, nextAt));
  const entries = new Map(main);
  if (exif) entries.set(0x8769, long(write(exif)));
  if (gps) entries.set(0x8825, long(write(gps)));
  const nextAt = next ? write(next) : 0;
  const mainAt = write(entries, nextAt);
  const tiff = Buffer.concat(chunks);
  tiff.writeUInt32LE(mainAt, 4);
  return tiff;
}

function layOut(directory: Directory, append: (bytes: Buffer) => number, nextAt: number): Buffer {
  const sorted = [...directory].sort(([a], [b]) => a - b);
  const fields = sorted.map(([tag, { type, count, bytes }]) => {
    const field = Buffer.alloc(12);
    field.writeUInt16LE(tag, 0);
    field.writeUInt16LE(type, 2);
    field.writeUInt32LE(count, 4);
    if (bytes.length <= 4) bytes.copy(field, 8);
    else field.writeUInt32LE(append(bytes), 8);
    return field;
  });
  const head = Buffer.alloc(2);
  head.writeUInt16LE(fields.length);
  const tail = Buffer.alloc(4);
  tail.writeUInt32LE(nextAt);
  return Buffer.concat([head, ...fields, tail]);
}

/** An EXIF block that gives everything away; or a whole TIFF that does, from its picture's tags. */
export function buildPlantedExif(picture?: Directory): Buffer {
  const thumbnail = Buffer.from(PLANTED.thumbnail, "latin1");
  return buildTiff(
    new Map([[0x010f, text(PLANTED.make)], [0x0110, text(PLANTED.model)], ...(picture ?? [])]),
    new Map([
      [0xa430, text(PLANTED.owner)],
      [0xa431, text(PLANTED.serial)],
      [0x927c, blob(thumbnail)],
    ]),
    buildPlantedPlace(),
    picture ? undefined : new Map([[0x010e, text(PLANTED.thumbnail)]]),
  );
}

function buildPlantedPlace(): Directory {
  return new Map([
    [1, text("N")],
    [2, rationals([51, 1], [30, 1], PLANTED.seconds)],
    [3, text("W")],
    [4, rationals([0, 1], [7, 1], [0, 1])],
  ]);
}

/** Only which way up the picture is. */
export function buildOrientationExif(orientation: number): Buffer {
  return buildTiff(new Map([[0x0112, short(orientation)]]));
}

export function buildPlantedXmp(): string {
  return `<?xpacket begin="" id="W5M0MpCehiHzreSzNTczkc9d"?><x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description rdf:about="" xmlns:exif="http://ns.adobe.com/exif/1.0/" xmlns:aux="http://ns.adobe.com/exif/1.0/aux/" exif:GPSLatitude="51,30.0N" exif:GPSLongitude="0,7.0W" aux:SerialNumber="${PLANTED.serial}"/></rdf:RDF></x:xmpmeta><?xpacket end="w"?>`;
}

/** Decoded pixels with four samples each: red, green, blue, opacity. */
export interface RgbaPixels {
  readonly data: Uint8Array | Uint8ClampedArray;
  readonly width: number;
  readonly height: number;
}

const short = 3;
const long = 4;
const undefinedType = 7;
const headerLength = 8;

/** Puts pixels and a colour profile into an uncompressed TIFF 6.0, big-endian, in one strip. */
export function wrapAsTiff(pixels: RgbaPixels, profile: Uint8Array = new Uint8Array()): Buffer {
  const bitsAt = headerLength;
  const profileAt = bitsAt + 8;
  const pixelsAt = profileAt + profile.length + (profile.length % 2);
  const directoryAt = pixelsAt + pixels.data.length;
  const directory = encodeDirectory([
    [256, long, 1, pixels.width],
    [257, long, 1, pixels.height],
    [258, short, 4, bitsAt],
    [259, short, 1, 1], // not compressed
    [262, short, 1, 2], // red, green, blue
    [273, long, 1, pixelsAt],
    [277, short, 1, 4],
    [278, long, 1, pixels.height],
    [279, long, 1, pixels.data.length],
    [338, short, 1, 2], // the fourth sample is opacity
    ...(profile.length > 0 ? [[34675, undefinedType, profile.length, profileAt] as Entry] : []),
  ]);
  const file = Buffer.alloc(directoryAt + directory.length);
  file.write("MM\0*", 0, "latin1");
  file.writeUInt32BE(directoryAt, 4);
  file.set([0, 8, 0, 8, 0, 8, 0, 8], bitsAt);
  file.set(profile, profileAt);
  file.set(pixels.data, pixelsAt);
  file.set(directory, directoryAt);
  return file;
}

type Entry = [tag: number, type: number, count: number, value: number];

function encodeDirectory(entries: readonly Entry[]): Buffer {
  const directory = Buffer.alloc(2 + entries.length * 12 + 4);
  directory.writeUInt16BE(entries.length, 0);
  entries.forEach(([tag, type, count, value], index) => {
    const at = 2 + index * 12;
    directory.writeUInt16BE(tag, at);
    directory.writeUInt16BE(type, at + 2);
    directory.writeUInt32BE(count, at + 4);
    if (type === short && count === 1) directory.writeUInt16BE(value, at + 8);
    else directory.writeUInt32BE(value, at + 8);
  });
  return directory;
}

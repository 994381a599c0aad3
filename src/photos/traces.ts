import { inflateSync } from "node:zlib";
import exifr from "exifr";
import { bufferOf, latin1, type Part, type Parts } from "./containers/part.ts";
import { parseParts, stretchesOutsidePixels } from "./containers/parts.ts";
import type { PictureFormat } from "./format.ts";

/** What a photograph gives away about whoever took it. */
export type Trace = "device" | "owner" | "place" | "serial";

/**
 * Finds the traces in a picture's metadata, in alphabetical order.
 *
 * EXIF is looked for by its own header anywhere outside the coded pixels, XMP by the names of its properties,
 * and a film's place (phones append one to a photograph) by its atom. So nothing depends on where a
 * format keeps them, and second pictures, thumbnails and appended films are covered as well.
 */
export async function findTraces(
  format: PictureFormat,
  bytes: Uint8Array,
  parts: Parts = parseParts(format, bytes),
): Promise<Trace[]> {
  const found = new Set<Trace>();
  const hidden = format === "png" ? unpackPngTexts(bytes, parts) : [];
  for (const stretch of [...stretchesOutsidePixels(format, bytes, parts), ...hidden]) {
    for (const trace of await findExifTraces(stretch)) found.add(trace);
    for (const trace of findTextTraces(stretch)) found.add(trace);
  }
  return [...found].sort();
}

const TIFF_HEADERS = ["II*\0", "MM\0*"].map((header) => Buffer.from(header, "latin1"));

async function findExifTraces(bytes: Uint8Array): Promise<Trace[]> {
  const found: Trace[] = [];
  for (const header of TIFF_HEADERS) {
    for (const at of findAll(bytes, header)) found.push(...(await readExif(bytes.subarray(at))));
  }
  return found;
}

function findAll(bytes: Uint8Array, needle: Buffer): number[] {
  const buffer = bufferOf(bytes);
  const found: number[] = [];
  for (let at = buffer.indexOf(needle); at >= 0; at = buffer.indexOf(needle, at + 1)) {
    found.push(at);
  }
  return found;
}

const EXIF_OPTIONS = {
  tiff: true,
  exif: true,
  gps: true,
  mergeOutput: false,
  translateValues: false,
  reviveValues: false,
};

const EXIF_TAGS: Record<Trace, string[]> = {
  device: ["Make", "Model", "LensMake", "LensModel", "HostComputer"],
  owner: ["Artist", "OwnerName", "CameraOwnerName", "XPAuthor"],
  place: ["GPSLatitude", "GPSLongitude", "GPSDestLatitude", "GPSDestLongitude"],
  serial: ["SerialNumber", "BodySerialNumber", "LensSerialNumber", "ImageUniqueID"],
};

/** A stretch that only happens to begin like EXIF cannot be read, and holds no trace. */
async function readExif(bytes: Uint8Array): Promise<Trace[]> {
  const blocks = await exifr.parse(bytes, EXIF_OPTIONS).catch(() => undefined);
  const tags = Object.assign({}, ...Object.values(blocks ?? {}));
  const isSet = (tag: string) => tags[tag] !== undefined && tags[tag] !== "";
  return tracesWhere((trace) => EXIF_TAGS[trace].some(isSet));
}

const XMP_PATTERNS: Record<Trace, RegExp> = {
  device: xmpProperty("tiff:(?:Make|Model)"),
  owner: xmpProperty("(?:aux|exifEX|exif):(?:Camera)?OwnerName"),
  place: xmpProperty("exif:GPS(?:Dest)?(?:Latitude|Longitude)"),
  serial: xmpProperty("(?:aux|exifEX):(?:Body|Lens)?SerialNumber"),
};

/** A property with a value, written as an attribute or as an element. */
function xmpProperty(name: string): RegExp {
  return new RegExp(`${name}\\s*(?:=\\s*["']\\s*[^"'\\s]|>\\s*[^<\\s])`);
}

/** ISO 6709 place of a film, in its `©xyz` atom or under the key that newer films use. */
const FILM_PLACES = [/\xa9xyz..(?:..)?[+-]\d\d/s, /location\.ISO6709.{0,4096}?[+-]\d\d\.\d/s];
const FILM_NEEDLES = ["\xa9xyz", "location.ISO6709"];
const XMP_NEEDLES = ["exif:GPS", "tiff:M", "SerialNumber", "OwnerName"];
const WINDOW = 8192;

function findTextTraces(bytes: Uint8Array): Trace[] {
  const xmp = windowsAround(bytes, XMP_NEEDLES);
  const films = windowsAround(bytes, FILM_NEEDLES);
  const holdsFilmPlace = films.some((text) => FILM_PLACES.some((pattern) => pattern.test(text)));
  return tracesWhere(
    (trace) =>
      xmp.some((text) => XMP_PATTERNS[trace].test(text)) || (trace === "place" && holdsFilmPlace),
  );
}

/** The text around each needle: the patterns run over little instead of the whole file. */
function windowsAround(bytes: Uint8Array, needles: string[]): string[] {
  return needles.flatMap((needle) =>
    findAll(bytes, Buffer.from(needle, "latin1")).map((at) =>
      latin1(bytes, Math.max(0, at - 16), Math.min(bytes.length, at + WINDOW)),
    ),
  );
}

function tracesWhere(holds: (trace: Trace) => boolean): Trace[] {
  return (["device", "owner", "place", "serial"] as const).filter(holds);
}

const MAX_TEXT = 16 * 1024 * 1024;

/** The texts of a PNG that are packed (zTXt, iTXt) or spelt in hexadecimal ("Raw profile type"). */
function unpackPngTexts(bytes: Uint8Array, { parts }: Parts): Uint8Array[] {
  return parts.flatMap((chunk) => {
    const text = unpackText(bytes, chunk);
    return text ? [text, ...decodeRawProfile(text)] : [];
  });
}

function unpackText(bytes: Uint8Array, chunk: Part): Uint8Array | undefined {
  const body = bufferOf(bytes).subarray(chunk.bodyStart, chunk.bodyEnd);
  const afterKey = body.indexOf(0) + 1;
  if (chunk.name === "tEXt") return body;
  if (chunk.name === "zTXt") return inflate(body.subarray(afterKey + 1));
  if (chunk.name !== "iTXt" || body[afterKey] !== 1) return undefined;
  const afterLanguage = body.indexOf(0, afterKey + 2) + 1;
  const afterTranslation = body.indexOf(0, afterLanguage) + 1;
  return inflate(body.subarray(afterTranslation));
}

function inflate(bytes: Uint8Array): Uint8Array | undefined {
  try {
    return inflateSync(bytes, { maxOutputLength: MAX_TEXT });
  } catch {
    return undefined;
  }
}

/** Older programs keep EXIF in a PNG as a name, a length and lines of hexadecimal digits. */
function decodeRawProfile(text: Uint8Array): Uint8Array[] {
  const digits = /^(?:Raw profile type \w+\0)?\s*\w+\s+\d+\s+([\da-f\s]+)$/i.exec(
    latin1(text, 0, text.length),
  )?.[1];
  return digits ? [Buffer.from(digits.replace(/\s+/g, ""), "hex")] : [];
}

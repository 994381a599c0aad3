/** What a picture is by its content; its name has no say. */
export type PictureFormat = "avif" | "heic" | "jpeg" | "png" | "tiff" | "webp";

const avifBrands = ["avif", "avis"];
const heicBrands = ["heic", "heix", "heim", "heis", "hevc", "hevx", "mif1", "msf1"];

/** The format that the first bytes tell, or undefined where they are no picture's that is read. */
export function sniffFormat(bytes: Uint8Array): PictureFormat | undefined {
  if (startsWith(bytes, [0xff, 0xd8, 0xff])) return "jpeg";
  if (startsWith(bytes, [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])) return "png";
  if (ascii(bytes, 0, 4) === "RIFF" && ascii(bytes, 8, 12) === "WEBP") return "webp";
  if (startsWith(bytes, [0x49, 0x49, 0x2a, 0]) || startsWith(bytes, [0x4d, 0x4d, 0, 0x2a])) {
    return "tiff";
  }
  return sniffBrands(bytes);
}

/** AVIF and HEIC are one kind of box file; the brands in its first box tell them apart. */
function sniffBrands(bytes: Uint8Array): PictureFormat | undefined {
  const brands = readBrands(bytes);
  if (brands.some((brand) => avifBrands.includes(brand))) return "avif";
  if (brands.some((brand) => heicBrands.includes(brand))) return "heic";
  return undefined;
}

function readBrands(bytes: Uint8Array): string[] {
  if (ascii(bytes, 4, 8) !== "ftyp") return [];
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = Math.min(view.getUint32(0), bytes.length);
  const brands = [ascii(bytes, 8, 12)];
  for (let at = 16; at + 4 <= end; at += 4) brands.push(ascii(bytes, at, at + 4));
  return brands;
}

/** Says what bytes that are no readable picture seem to be: completes "This is ...". */
export function describeContent(bytes: Uint8Array): string {
  if (ascii(bytes, 0, 3) === "GIF") return "a GIF";
  if (ascii(bytes, 0, 2) === "BM") return "a BMP";
  if (ascii(bytes, 0, 5) === "%PDF-") return "a PDF document";
  if (ascii(bytes, 4, 8) === "ftyp") return "a film";
  return describeText(bytes) ?? "a file of a kind that is not known";
}

function describeText(bytes: Uint8Array): string | undefined {
  const head = Buffer.from(bytes.subarray(0, 1024)).toString("utf8");
  if (/<svg[\s>]/i.test(head)) return "an SVG drawing";
  if (/<(!doctype\s+html|html)[\s>]/i.test(head)) return "a web page";
  const looksLikeText = [...bytes.subarray(0, 1024)].every((byte) => byte >= 32 || isSpace(byte));
  return looksLikeText ? "text" : undefined;
}

function isSpace(byte: number): boolean {
  return byte === 9 || byte === 10 || byte === 13;
}

function startsWith(bytes: Uint8Array, signature: readonly number[]): boolean {
  return signature.every((byte, at) => bytes[at] === byte);
}

function ascii(bytes: Uint8Array, from: number, to: number): string {
  return String.fromCharCode(...bytes.subarray(from, to));
}

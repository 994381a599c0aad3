/** Reads the QR codes (ISO/IEC 18004) that lie in a picture. */
import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { mostCodesInFrame } from "../terms/limits.ts";
import { openPixels } from "./decode.ts";
import type { Pixels } from "./pixels.ts";

type Reader = typeof import("zxing-wasm/reader");

let reader: Promise<Reader> | undefined;

/** The reader is loaded when the first picture is read, from its own package: it never asks a network. */
function openReader(): Promise<Reader> {
  reader ??= (async () => {
    const [library, wasm] = await Promise.all([
      import("zxing-wasm/reader"),
      readFile(createRequire(import.meta.url).resolve("zxing-wasm/reader/zxing_reader.wasm")),
    ]);
    library.prepareZXingModule({ overrides: { wasmBinary: Uint8Array.from(wasm).buffer } });
    return library;
  })();
  return reader;
}

/**
 * At this width a code that fills an eleventh of a picture is read in a quarter of a second, and
 * hardly more is found in a larger one. Codes under some 90 points are not found.
 */
const readingWidth = 1600;

/**
 * What the QR codes in a picture say, word for word, in no order that means anything; a code that lies
 * there twice is told once.
 */
export async function readCodes(pixels: Pixels): Promise<readonly string[]> {
  const { readBarcodes } = await openReader();
  const { data, info } = await openPixels(pixels)
    .resize({ width: readingWidth, height: readingWidth, fit: "inside", withoutEnlargement: true })
    .ensureAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  const { width, height } = info;
  const image = { data: new Uint8ClampedArray(data), width, height, colorSpace: "srgb" } as const;
  const found = await readBarcodes(image as ImageData, {
    formats: ["QRCode"],
    maxNumberOfSymbols: mostCodesInFrame,
  });
  return [...new Set(found.filter(({ isValid }) => isValid).map(({ text }) => text))];
}

import type { Metadata } from "sharp";
import { parseParts } from "./containers/parts.ts";
import { engine } from "./engine.ts";
import {
  cutShortFault,
  damagedFault,
  emptyFault,
  MAX_PIXELS,
  notReadableFault,
  type PictureFault,
  tooLargeFault,
} from "./fault.ts";
import { describeContent, type PictureFormat, sniffFormat } from "./format.ts";
import { findTraces, type Trace } from "./traces.ts";

/** What is known of a picture without decoding it. */
export interface PictureFacts {
  /** By its content, whatever its name says. */
  format: PictureFormat;
  /** In pixels, the way up that it is looked at. */
  width: number;
  height: number;
  /** What it gives away about whoever took it: above all "place". */
  traces: Trace[];
}

export type Inspection = { facts: PictureFacts } | { fault: PictureFault };

/**
 * Looks at a photograph's bytes: what it is, how large, and what it gives away. Bytes that are no
 * usable photograph give a fault; damage deep inside shows only when the picture is decoded.
 */
export async function inspectPicture(bytes: Uint8Array): Promise<Inspection> {
  if (bytes.length === 0) return { fault: emptyFault() };
  const sniffed = sniffFormat(bytes);
  if (!sniffed) return { fault: notReadableFault(describeContent(bytes)) };
  const metadata = await readHeader(bytes);
  const parts = parseParts(sniffed, bytes);
  const cutShort = !parts.complete;
  if (!metadata) return { fault: cutShort ? cutShortFault() : damagedFault() };
  const format = formatOf(metadata);
  if (!format) return { fault: notReadableFault(`a picture coded as ${metadata.compression}`) };
  const { width, height } = metadata.autoOrient;
  if (width * height > MAX_PIXELS) return { fault: tooLargeFault(width, height) };
  if (cutShort) return { fault: cutShortFault() };
  return { facts: { format, width, height, traces: await findTraces(format, bytes, parts) } };
}

/** The header alone, so the limit on size is ours to state. Undefined where it makes no sense. */
async function readHeader(bytes: Uint8Array): Promise<Metadata | undefined> {
  try {
    return await engine()(bytes, { limitInputPixels: false }).metadata();
  } catch {
    return undefined;
  }
}

/** AVIF and HEIC differ by how they are coded, not by what their first box calls them. */
function formatOf(metadata: Metadata): PictureFormat | undefined {
  if (metadata.format === "heif") {
    if (metadata.compression === "av1") return "avif";
    return metadata.compression === "hevc" ? "heic" : undefined;
  }
  const formats: PictureFormat[] = ["jpeg", "png", "tiff", "webp"];
  return formats.find((format) => format === metadata.format);
}

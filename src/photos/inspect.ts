import type { Metadata } from "sharp";
import { largestPicture, mostPassPixels, mostPixels } from "../terms/limits.ts";
import type { Parts } from "./containers/part.ts";
import { parseParts } from "./containers/parts.ts";
import { engine } from "./engine.ts";
import {
  cutShortFault,
  damagedFault,
  emptyFault,
  notReadableFault,
  type PictureFault,
  tooHeavyFault,
  tooLargeFault,
  tooMuchFault,
} from "./fault.ts";
import { describeContent, type PictureFormat, sniffFormat } from "./format.ts";
import { holdTo, OverLimit } from "./over-limit.ts";
import { type Sifted, siftPicture } from "./scrub/scrub-format.ts";
import type { Trace } from "./traces/trace.ts";

/** What is known of a picture without decoding it. */
export interface PictureFacts {
  /** By its content, whatever its name says. */
  readonly format: PictureFormat;
  /** In pixels, the way up that it is looked at. */
  readonly width: number;
  readonly height: number;
  /** What it gives away about whoever took it: above all "place". */
  readonly traces: readonly Trace[];
}

export type Inspection = { readonly facts: PictureFacts } | { readonly fault: PictureFault };

/**
 * Looks at a photograph's bytes: what it is, how large, and what it gives away. Bytes that are no
 * usable photograph give a fault, and so do ones that hold more of anything than a studio's do;
 * damage deep inside shows only when the picture is decoded.
 */
export async function inspectPicture(bytes: Uint8Array): Promise<Inspection> {
  const taken = await takeApart(bytes);
  return "fault" in taken ? taken : { facts: taken.facts };
}

/** As `inspectPicture`, with the picture parted from all that it does not need. */
export async function takeApart(
  bytes: Uint8Array,
): Promise<{ facts: PictureFacts; sifted: Sifted } | { fault: PictureFault }> {
  if (bytes.length === 0) return { fault: emptyFault() };
  if (bytes.length > largestPicture) return { fault: tooHeavyFault(bytes.length) };
  const sniffed = sniffFormat(bytes);
  if (!sniffed) return { fault: notReadableFault(describeContent(bytes)) };
  try {
    return await takePictureApart(sniffed, bytes);
  } catch (error) {
    if (error instanceof OverLimit) return { fault: tooMuchFault(error.what) };
    throw error;
  }
}

async function takePictureApart(
  sniffed: PictureFormat,
  bytes: Uint8Array,
): Promise<{ facts: PictureFacts; sifted: Sifted } | { fault: PictureFault }> {
  const parts = parseParts(sniffed, bytes);
  const metadata = await readHeader(bytes);
  const cutShort = !parts.complete;
  if (!metadata) return { fault: cutShort ? cutShortFault() : damagedFault() };
  const format = formatOf(metadata);
  if (!format) return { fault: notReadableFault(`a picture coded as ${metadata.compression}`) };
  const { width, height } = metadata.autoOrient;
  if (width * height > mostPixels) return { fault: tooLargeFault(width, height) };
  if (cutShort) return { fault: cutShortFault() };
  if (format === "jpeg") holdPasses(parts, width * height);
  const sifted = siftPicture(format, bytes, metadata);
  return { facts: { format, width, height, traces: sifted.traces }, sifted };
}

/** Every pass goes over the whole picture again. */
function holdPasses({ parts }: Parts, pixels: number): void {
  const passes = parts.filter(({ name }) => name === "da").length;
  const most = Math.max(20, Math.floor(mostPassPixels / pixels));
  holdTo(most, passes, "passes for a picture of its size");
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
  const formats: readonly PictureFormat[] = ["jpeg", "png", "tiff", "webp"];
  return formats.find((format) => format === metadata.format);
}

import type { Sharp } from "sharp";
import { mostPixels } from "../terms/limits.ts";
import { parseParts } from "./containers/parts.ts";
import { engine } from "./engine.ts";
import { cutShortFault, damagedFault, type PictureFault } from "./fault.ts";
import type { PictureFormat } from "./format.ts";
import { decodeHeicToTiff } from "./heic.ts";
import type { Pixels } from "./pixels.ts";
import { chooseWidths, maxHeight, pictureWidths, sampleWidth } from "./recipe.ts";

/**
 * Decodes a photograph once, at the largest size that is shown: the way up that it is looked at,
 * in sRGB, transparent parts on white. A picture that cannot be decoded gives a fault.
 */
export async function decodeLargest(
  bytes: Uint8Array,
  format: PictureFormat,
): Promise<{ pixels: Pixels } | { fault: PictureFault }> {
  try {
    const readable = format === "heic" ? await unpackHeic(bytes) : bytes;
    const decoded = engine()(readable, { failOn: "error", limitInputPixels: mostPixels })
      .autoOrient()
      .resize({
        width: pictureWidths[0],
        height: maxHeight,
        fit: "inside",
        withoutEnlargement: true,
      })
      .flatten({ background: "#ffffff" })
      .toColourspace("srgb");
    return { pixels: await takePixels(decoded) };
  } catch {
    return { fault: parseParts(format, bytes).complete ? damagedFault() : cutShortFault() };
  }
}

async function unpackHeic(bytes: Uint8Array): Promise<Buffer> {
  const { icc } = await engine()(bytes).metadata();
  return decodeHeicToTiff(bytes, icc);
}

/** Every size that is made, widest first, each from the one before it. */
export async function* shrinkStepwise(largest: Pixels): AsyncGenerator<Pixels> {
  let current = largest;
  for (const width of chooseWidths(largest.width)) {
    if (width < current.width) {
      current = await takePixels(openPixels(current).resize({ width }));
    }
    yield current;
  }
}

/** The size that is judged and measured: small enough to be quick, the same every time. */
export async function takeSample(largest: Pixels): Promise<Pixels> {
  let sample = largest;
  for await (const pixels of shrinkStepwise(largest)) {
    if (pixels.width < sampleWidth) break;
    sample = pixels;
  }
  return sample;
}

export function openPixels({ data, width, height }: Pixels): Sharp {
  return engine()(data, { raw: { width, height, channels: 3 } });
}

async function takePixels(image: Sharp): Promise<Pixels> {
  const { data, info } = await image.raw({ depth: "uchar" }).toBuffer({ resolveWithObject: true });
  return { data, width: info.width, height: info.height };
}

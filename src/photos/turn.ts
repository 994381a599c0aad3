/** Turns a photograph that lies on its side. */

import { engine } from "./engine.ts";
import { damagedFault, notReadableFault, type PictureFault } from "./fault.ts";
import { describeContent, type PictureFormat, sniffFormat } from "./format.ts";
import { decodeHeicToTiff } from "./heic.ts";

/** To the right, as a clock's hand goes. */
export type Turning = 90 | 180 | 270;

/**
 * Turns a photograph for good. It is coded anew: a PNG without loss, any other as a JPEG of quality 95
 * with all of its colour, in its size and with its colour profile.
 */
export async function turnPicture(
  bytes: Uint8Array,
  turning: Turning,
): Promise<
  { readonly bytes: Uint8Array; readonly format: PictureFormat } | { fault: PictureFault }
> {
  const format = sniffFormat(bytes);
  if (!format) return { fault: notReadableFault(describeContent(bytes)) };
  try {
    const upright = engine()(await readable(bytes, format), { failOn: "error" })
      .autoOrient()
      .rotate(turning)
      .keepIccProfile();
    if (format === "png") return { bytes: await upright.png().toBuffer(), format };
    const jpeg = upright
      .flatten({ background: "#ffffff" })
      .jpeg({ quality: 95, chromaSubsampling: "4:4:4" });
    return { bytes: await jpeg.toBuffer(), format: "jpeg" };
  } catch {
    return { fault: damagedFault() };
  }
}

async function readable(bytes: Uint8Array, format: PictureFormat): Promise<Uint8Array> {
  if (format !== "heic") return bytes;
  return decodeHeicToTiff(bytes, (await engine()(bytes).metadata()).icc);
}

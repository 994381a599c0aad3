import { decodeLargest } from "../decode.ts";
import { engine } from "../engine.ts";
import type { PictureFault } from "../fault.ts";
import { type PictureFormat, sniffFormat } from "../format.ts";
import { inspectPicture } from "../inspect.ts";
import { findTraces, type Trace } from "../traces.ts";
import { scrubIsobmff } from "./isobmff.ts";
import { scrubJpeg } from "./jpeg.ts";
import { scrubPng } from "./png.ts";
import { rewriteTiff } from "./tiff.ts";
import { scrubWebp } from "./webp.ts";

export type Scrubbing =
  /** It gives nothing away: there is nothing to do. */
  | { outcome: "clean" }
  /**
   * `bytes` are the same picture without metadata, in the same format. The coded picture was not
   * touched, unless `repacked`: then it was packed anew, without loss.
   */
  | { outcome: "scrubbed"; bytes: Uint8Array; removed: Trace[]; repacked: boolean }
  /** It cannot be read, or what it gives away cannot be taken out without loss. */
  | { outcome: "fault"; fault: PictureFault | UnscrubbableFault };

export type UnscrubbableFault = Omit<PictureFault, "code"> & { code: "picture-not-scrubbed" };

/**
 * Takes out of a photograph what it gives away about whoever took it (place, device, serial number,
 * owner) and with it all other metadata but its colour profile and its way up. Looks afterwards
 * whether it is really gone, and whether the picture is the same, pixel for pixel: a file that tells
 * wrongly where its parts stand would otherwise be damaged.
 */
export async function scrubPicture(bytes: Uint8Array): Promise<Scrubbing> {
  const inspection = await inspectPicture(bytes);
  if ("fault" in inspection) return { outcome: "fault", fault: inspection.fault };
  const { format, traces } = inspection.facts;
  if (traces.length === 0) return { outcome: "clean" };
  const scrubbed = await scrub(format, bytes);
  const left = scrubbed ? await findTraces(format, scrubbed) : traces;
  if (!scrubbed || left.length > 0) return { outcome: "fault", fault: unscrubbable(left) };
  if (!(await showTheSame(bytes, scrubbed))) return { outcome: "fault", fault: CHANGED };
  return { outcome: "scrubbed", bytes: scrubbed, removed: traces, repacked: format === "tiff" };
}

/** Undefined where it cannot be done without loss, or the file is too odd to be changed safely. */
async function scrub(format: PictureFormat, bytes: Uint8Array): Promise<Buffer | undefined> {
  const metadata = await engine()(bytes, { limitInputPixels: false }).metadata();
  const orientation = metadata.orientation ?? 1;
  switch (format) {
    case "jpeg":
      return scrubJpeg(bytes, orientation);
    case "png":
      return scrubPng(bytes, orientation);
    case "webp":
      return scrubWebp(bytes, orientation);
    case "tiff":
      return rewriteTiff(bytes, metadata);
    case "avif":
    case "heic":
      return scrubIsobmff(bytes);
  }
}

async function showTheSame(before: Uint8Array, after: Uint8Array): Promise<boolean> {
  const [one, other] = [await decode(before), await decode(after)];
  return one !== undefined && other !== undefined && Buffer.compare(one, other) === 0;
}

async function decode(bytes: Uint8Array): Promise<Uint8Array | undefined> {
  const format = sniffFormat(bytes);
  const decoded = format && (await decodeLargest(bytes, format));
  return decoded && "pixels" in decoded ? decoded.pixels.data : undefined;
}

const WORDS: Record<Trace, string> = {
  device: "the device",
  owner: "its owner's name",
  place: "the place",
  serial: "a serial number",
};

const HINT =
  "Save it as JPEG without its location (phones offer that when sharing), and put that in its place.";

function unscrubbable(left: Trace[]): UnscrubbableFault {
  const what = left.map((trace) => WORDS[trace]).join(", ");
  return {
    code: "picture-not-scrubbed",
    message: `The photograph still tells ${what}: that cannot be taken out of this file without loss.`,
    hint: HINT,
  };
}

const CHANGED: UnscrubbableFault = {
  code: "picture-not-scrubbed",
  message: "The photograph is built so oddly that it would not come out the same.",
  hint: HINT,
};

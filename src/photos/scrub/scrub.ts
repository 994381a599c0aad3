import { decodeLargest } from "../decode.ts";
import type { PictureFault } from "../fault.ts";
import { sniffFormat } from "../format.ts";
import { inspectPicture, type PictureFacts, takeApart } from "../inspect.ts";
import type { Trace } from "../traces/trace.ts";

export type Scrubbing =
  /** It gives nothing away: there is nothing to do. */
  | { readonly outcome: "clean" }
  /** `bytes` are the same picture and nothing beside it. The coded picture was not touched. */
  | { readonly outcome: "scrubbed"; readonly bytes: Uint8Array; readonly removed: readonly Trace[] }
  /** It cannot be read, or what it gives away cannot be taken out without risk. */
  | { readonly outcome: "fault"; readonly fault: PictureFault | UnscrubbableFault };

export type UnscrubbableFault = Omit<PictureFault, "code"> & {
  readonly code: "picture-not-scrubbed";
};

/**
 * Takes everything out of a photograph but the picture itself, its colour profile, its size and its
 * way up. What comes of it is read again and must pass as one that gives nothing away, and it must
 * show the same picture, pixel for pixel: a file that tells wrongly where its parts stand would
 * otherwise be damaged.
 */
export async function scrubPicture(bytes: Uint8Array): Promise<Scrubbing> {
  const taken = await takeApart(bytes);
  if ("fault" in taken) return { outcome: "fault", fault: taken.fault };
  const { facts, sifted } = taken;
  if (facts.traces.length === 0) return { outcome: "clean" };
  if (!sifted.bytes) return { outcome: "fault", fault: notSure };
  const isSound = await isScrubbedSoundly(sifted.bytes, facts);
  if (!isSound || !(await showTheSame(bytes, sifted.bytes))) {
    return { outcome: "fault", fault: changed };
  }
  return { outcome: "scrubbed", bytes: sifted.bytes, removed: facts.traces };
}

/** Whether what was made is such a picture, of the same size, and gives nothing away. */
async function isScrubbedSoundly(bytes: Uint8Array, before: PictureFacts): Promise<boolean> {
  const again = await inspectPicture(bytes);
  if ("fault" in again) return false;
  const { format, width, height, traces } = again.facts;
  const isSameSize = width === before.width && height === before.height;
  return traces.length === 0 && isSameSize && format === before.format;
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

const saveWithoutPlace =
  "Save it as JPEG without its location (phones offer that when sharing), and put that in its place.";

const notSure: UnscrubbableFault = {
  code: "picture-not-scrubbed",
  message:
    "More than one picture is in the file, or it is built so that nothing can be taken out without risk to the picture.",
  hint: saveWithoutPlace,
};

const changed: UnscrubbableFault = {
  code: "picture-not-scrubbed",
  message: "The photograph is built so oddly that it would not come out the same.",
  hint: saveWithoutPlace,
};

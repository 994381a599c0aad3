import { once } from "node:events";
import { Worker } from "node:worker_threads";
import { viewOf } from "./containers/part.ts";
import { type RgbaPixels, wrapAsTiff } from "./tiff-wrap.ts";

/**
 * Decodes a HEIC, which the picture library cannot, into an uncompressed TIFF that it can read.
 * The file's own turning is applied; its colour profile goes with it, so that a phone's wide
 * colours are converted like those of any other picture.
 *
 * Throws what the decoder throws where the file is damaged.
 */
export async function decodeHeicToTiff(bytes: Uint8Array, profile?: Uint8Array): Promise<Buffer> {
  return wrapAsTiff(await decodeInWorker(withReadableBrand(bytes)), profile);
}

/**
 * A thread of its own keeps the others going for the seconds that a decoding takes, gives its
 * memory back afterwards, and swallows what the decoder prints about damaged files.
 */
async function decodeInWorker(bytes: Uint8Array): Promise<RgbaPixels> {
  const worker = new Worker(new URL("./heic-worker.mjs", import.meta.url), {
    workerData: bytes,
    execArgv: [],
    stdout: true,
    stderr: true,
  });
  try {
    const [pixels] = await once(worker, "message");
    return pixels;
  } finally {
    await worker.terminate();
  }
}

/** The decoder goes by the first brand alone and knows fewer of them than it can decode. */
function withReadableBrand(bytes: Uint8Array): Uint8Array {
  const copy = Uint8Array.from(bytes);
  viewOf(copy).setUint32(8, 0x68656963); // "heic"
  return copy;
}

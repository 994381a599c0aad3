import sharp from "sharp";

/** The loaders that may run; every other (SVG above all, which reads files beside it) is blocked. */
const loaders = [
  "VipsForeignLoadHeifBuffer",
  "VipsForeignLoadJpegBuffer",
  "VipsForeignLoadPngBuffer",
  "VipsForeignLoadTiffBuffer",
  "VipsForeignLoadWebpBuffer",
];

let settled = false;

/**
 * The picture library, set for this process on first use: one thread a picture, since pictures run
 * beside each other, and no cache of decoded pictures, since each is decoded once.
 */
export function engine(): typeof sharp {
  if (!settled) {
    sharp.block({ operation: ["VipsForeignLoad"] });
    sharp.unblock({ operation: loaders });
    sharp.concurrency(1);
    sharp.cache(false);
    settled = true;
  }
  return sharp;
}

/** The library's version: other versions may write other bytes from the same picture. */
export function engineVersion(): string {
  return sharp.versions.sharp ?? sharp.versions.vips;
}

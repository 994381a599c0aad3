/** A photograph made anew of its pixels, so that nothing of the file it came in is left. */

/** The longer side, at most: what a page shows of a tile, twice. */
export const mostPixelsWide = 3000;

/** Small enough for a mail, and no worse to look at: common practice, no published source. */
const quality = 0.88;

/** Larger files are not even opened: the largest that the archive takes. */
const largestFile = 150_000_000;

export interface Retaken {
  readonly jpeg: Blob;
  readonly width: number;
  readonly height: number;
}

/** Why a photograph could not be taken in, for whoever took it. */
export class PictureRefused extends Error {}

const noPicture =
  "This browser cannot open that file as a picture. Take the photograph with this page, or save it as JPEG first.";

/**
 * A photograph as a new JPEG, upright, no larger than it need be.
 *
 * @throws PictureRefused where it is none, or none that this device can hold
 */
export async function retake(file: Blob): Promise<Retaken> {
  if (file.size > largestFile)
    throw new PictureRefused("That file is larger than 150 MB. Take a smaller photograph.");
  const bitmap = await open(file);
  try {
    const scale = Math.min(1, mostPixelsWide / Math.max(bitmap.width, bitmap.height));
    const canvas = document.createElement("canvas");
    canvas.width = Math.max(1, Math.round(bitmap.width * scale));
    canvas.height = Math.max(1, Math.round(bitmap.height * scale));
    draw(canvas, bitmap);
    const { width, height } = canvas;
    return { jpeg: await encode(canvas), width, height };
  } finally {
    bitmap.close();
  }
}

/** The way up that the file tells is settled here: a canvas knows of none. */
async function open(file: Blob): Promise<ImageBitmap> {
  try {
    return await createImageBitmap(file, { imageOrientation: "from-image" });
  } catch {
    throw new PictureRefused(noPicture);
  }
}

/** On white, since a JPEG has no transparency. */
export function draw(canvas: HTMLCanvasElement, picture: ImageBitmap): void {
  const context = canvas.getContext("2d");
  if (!context) throw new PictureRefused("This device has no memory left for a picture.");
  context.fillStyle = "white";
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.drawImage(picture, 0, 0, canvas.width, canvas.height);
}

function encode(canvas: HTMLCanvasElement): Promise<Blob> {
  return new Promise((resolve, reject) =>
    canvas.toBlob(
      (blob) => (blob ? resolve(blob) : reject(new PictureRefused(noPicture))),
      "image/jpeg",
      quality,
    ),
  );
}

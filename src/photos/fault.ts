/**
 * A photograph that cannot be used, said in words for whoever took it. A fault is a plain result:
 * only a failing machine (disk, permission) throws.
 */
export interface PictureFault {
  code: PictureFaultCode;
  /** What is wrong, without the file's name: whoever reports it knows the record. */
  message: string;
  /** How to put it right. */
  hint: string;
}

export type PictureFaultCode =
  | "picture-cut-short"
  | "picture-damaged"
  | "picture-empty"
  | "picture-not-readable"
  | "picture-too-large";

/** The largest picture that is opened, in pixels: a little more than the largest phones take. */
export const MAX_PIXELS = 120_000_000;

const SAVE_AS = "Save it as JPEG (or PNG, WebP, AVIF, TIFF, HEIC) and put that in its place.";
const COPY_AGAIN = "Copy it from the camera or phone again; if it stays so, take a new photograph.";

export function emptyFault(): PictureFault {
  return {
    code: "picture-empty",
    message: "The photograph is empty: the file holds 0 bytes.",
    hint: COPY_AGAIN,
  };
}

/** `what` completes "This is ...", for example "an SVG drawing". */
export function notReadableFault(what: string): PictureFault {
  return {
    code: "picture-not-readable",
    message: `This is ${what}, whatever its name says, and not a photograph that can be shown.`,
    hint: SAVE_AS,
  };
}

export function cutShortFault(): PictureFault {
  return {
    code: "picture-cut-short",
    message: "The photograph breaks off before its end: part of the file is missing.",
    hint: COPY_AGAIN,
  };
}

export function damagedFault(): PictureFault {
  return {
    code: "picture-damaged",
    message: "The photograph is damaged: it begins like a picture but cannot be opened.",
    hint: COPY_AGAIN,
  };
}

export function tooLargeFault(width: number, height: number): PictureFault {
  const megapixels = (pixels: number) => `${Math.round(pixels / 1e6)} megapixels`;
  return {
    code: "picture-too-large",
    message: `The photograph has ${megapixels(width * height)} (${width} by ${height}); at most ${megapixels(MAX_PIXELS)} are opened.`,
    hint: "Make it smaller, for example 4000 pixels wide, and put that in its place.",
  };
}

import { largestPicture, mostPixels } from "../terms/limits.ts";

/**
 * A photograph that cannot be used, said in words for whoever took it. A fault is a plain result:
 * only a failing machine (disk, permission) throws.
 */
export interface PictureFault {
  readonly code: PictureFaultCode;
  /** What is wrong, without the file's name: whoever reports it knows the record. */
  readonly message: string;
  /** How to put it right. */
  readonly hint: string;
}

export type PictureFaultCode =
  | "picture-cut-short"
  | "picture-damaged"
  | "picture-empty"
  | "picture-not-readable"
  | "picture-too-large"
  | "picture-too-much";

const saveAs = "Save it as JPEG (or PNG, WebP, AVIF, TIFF, HEIC) and put that in its place.";
const saveAsNew =
  "Open it in a program for pictures, save it as a new JPEG, and put that in its place.";
const copyAgain = "Copy it from the camera or phone again; if it stays so, take a new photograph.";

export function emptyFault(): PictureFault {
  return {
    code: "picture-empty",
    message: "The photograph is empty: the file holds 0 bytes.",
    hint: copyAgain,
  };
}

/** `what` completes "This is ...", for example "an SVG drawing". */
export function notReadableFault(what: string): PictureFault {
  return {
    code: "picture-not-readable",
    message: `This is ${what}, whatever its name says, and not a photograph that can be shown.`,
    hint: saveAs,
  };
}

export function cutShortFault(): PictureFault {
  return {
    code: "picture-cut-short",
    message: "The photograph breaks off before its end: part of the file is missing.",
    hint: copyAgain,
  };
}

export function damagedFault(): PictureFault {
  return {
    code: "picture-damaged",
    message: "The photograph is damaged: it begins like a picture but cannot be opened.",
    hint: copyAgain,
  };
}

export function tooLargeFault(width: number, height: number): PictureFault {
  const megapixels = (pixels: number) => `${Math.round(pixels / 1e6)} megapixels`;
  return {
    code: "picture-too-large",
    message: `The photograph has ${megapixels(width * height)} (${width} by ${height}); at most ${megapixels(mostPixels)} are opened.`,
    hint: "Make it smaller, for example 4000 pixels wide, and put that in its place.",
  };
}

export function tooHeavyFault(bytes: number): PictureFault {
  const megabytes = (length: number) => `${Math.round(length / 1e6)} MB`;
  return {
    code: "picture-too-large",
    message: `The photograph's file has ${megabytes(bytes)}; at most ${megabytes(largestPicture)} are read.`,
    hint: saveAsNew,
  };
}

/** `what` completes "holds more than ...", for example "4,000 segments". */
export function tooMuchFault(what: string): PictureFault {
  return {
    code: "picture-too-much",
    message: `The photograph's file holds more than ${what}, which no camera writes, so it was not read to its end.`,
    hint: saveAsNew,
  };
}

/** Why a zip is not read, in words for whoever was handed it. */
import type { Entry } from "yauzl";
import { largestUnzipped, largestZip, mostZipEntries, mostZipRatio } from "../terms/limits.ts";

export interface ZipFault {
  readonly message: string;
  readonly hint: string;
}

const askAgain = "Ask whoever sent it for the tiles' own files, and do not open it by hand.";
const downloadAgain = "Download or copy it again; if it stays so, ask for it again.";

export const notAZip: ZipFault = {
  message: "It is no zip, or its end is missing.",
  hint: downloadAgain,
};

export const cutOff: ZipFault = {
  message: "Its list of files is damaged or cut off.",
  hint: downloadAgain,
};

export const tooMany: ZipFault = {
  message: `It holds more than ${mostZipEntries} files.`,
  hint: "A zip of tiles holds a few for each tile. Pack fewer into one zip, or hand in the folder itself.",
};

export const tooMuch: ZipFault = {
  message: `It would unpack to more than ${megabytes(largestUnzipped)}.`,
  hint: "Pack fewer tiles into one zip, or hand in the folder itself.",
};

export function tooLarge(bytes: number): ZipFault {
  return {
    message: `It has ${megabytes(bytes)}, and no more than ${megabytes(largestZip)} are read.`,
    hint: "Pack fewer tiles into one zip, or hand in the folder itself.",
  };
}

export function damaged(path: string): ZipFault {
  return {
    message: `“${path}” in it is damaged: it does not unpack to what the zip says of it.`,
    hint: downloadAgain,
  };
}

export function holdsTwice(path: string): ZipFault {
  return {
    message: `It holds “${path}” twice, and nobody can say which one is meant.`,
    hint: "Ask for a zip with one of the two.",
  };
}

/** Small files may be packed as tightly as they like. */
const smallFile = 1_000_000;

/**
 * Why one file in a zip makes all of it suspect; undefined where it does not.
 *
 * @param isOutside whether its name leads out of the folder that it is unpacked into
 */
export function findEntryFault(
  entry: Entry,
  path: string,
  isOutside: boolean,
): ZipFault | undefined {
  if (isOutside || path.includes("\0"))
    return {
      message: `A file in it is named “${path}”, which leads out of the folder it would be unpacked into.`,
      hint: askAgain,
    };
  if (isLink(entry))
    return { message: `“${path}” in it is no file but a link to one.`, hint: askAgain };
  if (entry.isEncrypted())
    return {
      message: "It is locked with a password.",
      hint: "Ask for it without one, or unpack it and hand in the folder.",
    };
  const { compressedSize, uncompressedSize } = entry;
  if (uncompressedSize > smallFile && uncompressedSize > compressedSize * mostZipRatio)
    return {
      message: `“${path}” in it unpacks to more than ${mostZipRatio} times its size, as no photograph does.`,
      hint: askAgain,
    };
  return undefined;
}

/** How Unix marks a link, in the upper half of what a zip knows of a file. */
function isLink({ externalFileAttributes }: Entry): boolean {
  return ((externalFileAttributes >>> 16) & 0o170000) === 0o120000;
}

function megabytes(bytes: number): string {
  return `${Math.round(bytes / 1e6)} MB`;
}

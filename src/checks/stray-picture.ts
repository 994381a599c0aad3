import type { Problem } from "../records/problem.ts";
import { type Check, toProblem } from "./check.ts";

export const strayPicture: Check = {
  name: "stray-picture",
  severity: "error",
  explains: "Every picture and film in the archive is a tile's photograph.",
};

/**
 * Pictures that no tile has: nobody looks at them, and a public archive publishes them all the same.
 *
 * @param files relative to the archive
 */
export function tellStrayPictures(files: readonly string[]): readonly Problem[] {
  return files.map((file) =>
    toProblem(strayPicture, { path: [], message, hint: hintFor(file) }, file),
  );
}

const message =
  "This picture or film is no tile's: Tilebook does not show it, but everyone who gets the archive gets it, and with it whatever place or name it carries";

const sharedAlready = "If the archive was shared already, it is still in its history.";

/** Other names for what is a JPEG all the same. */
const jpeg = /\.(?:jpe|jfif|jif)$/iu;

function hintFor(file: string): string {
  const name = file.slice(file.lastIndexOf("/") + 1);
  if (jpeg.test(name)) {
    const renamed = name.replace(jpeg, ".jpg");
    return `If it shows a tile, name it “${renamed}”; otherwise take it out of the archive. ${sharedAlready}`;
  }
  return `If it shows a tile, save it as JPEG beside the tile's record, under the tile's code; otherwise take it out of the archive. ${sharedAlready}`;
}

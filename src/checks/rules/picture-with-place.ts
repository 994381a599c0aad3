import type { TypedCommand } from "../../terms/typed-command.ts";
import type { ArchiveRule } from "../check.ts";
import { tracesIn } from "../picture-traces.ts";

export const pictureWithPlace: ArchiveRule = {
  of: "archive",
  name: "picture-with-place",
  severity: "error",
  explains: "No photograph in the archive carries the place where it was taken.",
  find: (_, { pictures, asTyped }) => {
    const files = [...pictures].flatMap(([file, picture]) =>
      tracesIn(picture).includes("place") ? [file] : [],
    );
    return files.map((file) => ({
      file,
      path: [],
      message:
        "This photograph carries the place where it was taken, and everyone who gets the archive could read it",
      hint: hintFor(files, asTyped),
    }));
  },
};

/** One command for all of them, however many there are. */
function hintFor(files: readonly string[], asTyped: TypedCommand): string {
  const many = files.length > 1;
  const takesOut = many
    ? "which takes the place out of every photograph of the archive and leaves the pictures as they are"
    : "which takes the place out and leaves the picture as it is";
  const history = many
    ? "the old pictures are still in its history"
    : "the old picture is still in its history";
  return `Run “${asTyped("scrub", many ? [] : files)}”, ${takesOut}. If the archive was shared already, ${history}.`;
}

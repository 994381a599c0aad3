import type { ArchiveRule } from "../check.ts";

export const pictureWithPlace: ArchiveRule = {
  of: "archive",
  name: "picture-with-place",
  severity: "error",
  explains: "No photograph in the archive carries the place where it was taken.",
  find: (_, { pictures }) =>
    [...pictures].flatMap(([file, inspection]) =>
      "facts" in inspection && inspection.facts.traces.includes("place")
        ? {
            file,
            path: [],
            message:
              "This photograph carries the place where it was taken, and everyone who gets the archive could read it",
            hint: `Run “tilebook scrub ${asTyped(file)}”, which takes the place out and leaves the picture as it is. If the archive was shared already, the old picture is still in its history.`,
          }
        : [],
    ),
};

/** A path as it is typed in a terminal. */
function asTyped(file: string): string {
  return /^[\w./-]+$/u.test(file) ? file : `"${file}"`;
}

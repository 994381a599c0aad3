/** What is said of links among an archive's files that are not followed. */
import type { Problem } from "../records/problem.ts";
import { problemOfFile } from "./problem-of-file.ts";

/** A link to what is not there. */
export function brokenLink(file: string): Problem {
  return problemOfFile(file, {
    code: "broken-link",
    message: `“${file}” is a link to something that is not there`,
    hint: "Put the file itself in its place, or take the link away.",
  });
}

/** A link that could publish what lies outside. */
export function linkOutside(file: string): Problem {
  return problemOfFile(file, {
    code: "link-outside",
    message: `“${file}” is a link that leads out of the archive, so it was not followed`,
    hint: "Put the file itself in its place.",
  });
}

/** A link to a folder, whose files would be there twice. */
export function linkToFolder(file: string): Problem {
  return problemOfFile(file, {
    code: "link-to-folder",
    message: `“${file}” is a link to a folder, and links to folders are not followed`,
    hint: "Put the folder itself in its place.",
  });
}

/** What is neither a file nor a folder of the archive. */
export function notAFile(file: string): Problem {
  return problemOfFile(file, {
    code: "not-a-file",
    message: `“${file}” is neither a file nor a folder`,
    hint: "Take it out of the archive.",
  });
}

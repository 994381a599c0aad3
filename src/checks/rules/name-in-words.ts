import type { ArchiveRule } from "../check.ts";
import { findNamesInWords } from "../names/name-findings.ts";

export const nameInWords: ArchiveRule = {
  of: "archive",
  name: "name-in-words",
  severity: "error",
  explains:
    "Notes and other words that everyone can read hold no name of a maker who asked for initials or for nothing.",
  find: (archive) => findNamesInWords(archive, true),
};

import type { ArchiveRule } from "../check.ts";
import { findNamesInWords } from "../names/name-findings.ts";

export const partOfNameInWords: ArchiveRule = {
  of: "archive",
  name: "part-of-name-in-words",
  severity: "warning",
  explains:
    "Notes and other words that everyone can read hold no part of the name of a maker who asked for initials or for nothing.",
  find: (archive) => findNamesInWords(archive, false),
};

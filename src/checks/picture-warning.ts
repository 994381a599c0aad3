/** Rules that hand on what was found by opening a photograph, in the words of whoever looked. */
import type { ArchiveRule } from "./check.ts";

/** A rule about how photographs were taken: a warning, for a poor photograph is better than none. */
export function pictureWarning(name: string, explains: string): ArchiveRule {
  return {
    of: "archive",
    name,
    severity: "warning",
    explains,
    find: (_, { pictures }) =>
      [...pictures].flatMap(([file, inspection]) =>
        ("warnings" in inspection ? (inspection.warnings ?? []) : [])
          .filter(({ code }) => code === name)
          .map(({ message, hint }) => ({ file, path: [], message, hint })),
      ),
  };
}

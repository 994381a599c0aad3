/** The studio's mark: looked at by `check`, and published by `build`. */
import { join } from "node:path";
import { type Mark, readMark } from "../../photos/mark/mark.ts";
import type { Archive } from "../../records/archive.ts";
import type { Problem } from "../../records/problem.ts";

export interface ExaminedMark {
  /** Undefined where the studio has none, or one that cannot be published. */
  readonly mark?: Mark;
  readonly problems: readonly Problem[];
}

/** Looks at the mark that studio.yaml names, if any. */
export async function examineMark(
  dir: string,
  { studio }: Archive,
  studioFile: string,
): Promise<ExaminedMark> {
  if (!studio.mark) return { problems: [] };
  const found = await readMark(join(dir, studio.mark.file));
  if (!("message" in found)) return { mark: found, problems: [] };
  const problem: Problem = {
    file: studioFile,
    path: ["mark", "file"],
    severity: "error",
    code: "mark-unusable",
    message: found.message,
    hint: found.hint,
  };
  return { problems: [problem] };
}

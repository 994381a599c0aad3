/** Tries new files of an archive before they are written: what the build's reader and checks would say of them. */
import { folderFiles } from "../../archive/folder-files.ts";
import { textParser } from "../../archive/parse-text.ts";
import type { NewFile } from "../../archive/write-new.ts";
import { carriedWords } from "../../chemistry/minerals/minerals.ts";
import type { LocatedProblem } from "../../reader/locate.ts";
import { readArchiveFiles } from "../../reader/read-archive-files.ts";
import { withFiles } from "../../reader/with-files.ts";
import { sortProblems, tellMessage } from "../../reporting/located-problem.ts";
import { makeLine } from "../../reporting/visible.ts";
import { asTypedFor } from "../as-typed.ts";
import { judgeArchive } from "../examine/examine.ts";

/** The problems that an archive has with the new files and has not without them, errors first. */
export function tryNew(dir: string, added: readonly NewFile[]): readonly LocatedProblem[] {
  const before = new Set(examineWith(dir, []).map(keyOf));
  const found = examineWith(dir, added).filter((problem) => !before.has(keyOf(problem)));
  return sortProblems(found).toSorted((a, b) => gradeOf(a) - gradeOf(b));
}

function gradeOf({ severity }: LocatedProblem): number {
  return severity === "error" ? 0 : 1;
}

function keyOf({ code, file, path, message }: LocatedProblem): string {
  return JSON.stringify([code, file, path, message]);
}

/** Photographs have no part in it: a new record has none yet. */
function examineWith(dir: string, added: readonly NewFile[]): readonly LocatedProblem[] {
  const contents = new Map(added.map(({ path, content }) => [path, content] as const));
  const read = readArchiveFiles(withFiles(folderFiles(dir), contents), {
    builtInMaterials: carriedWords,
    texts: textParser,
  });
  const checked = read.archive
    ? judgeArchive(read.archive, new Map(), asTypedFor(dir)).problems
    : [];
  return [...read.problems, ...checked].map(read.locate);
}

/** What is wrong, a problem a line or two: where, what, and how to put it right. */
export function tellTried(problems: readonly LocatedProblem[]): readonly string[] {
  return problems.flatMap((problem) => [
    `${makeLine(problem.file)}:${problem.line} ${problem.severity}: ${makeLine(tellMessage(problem))}.`,
    `  ${makeLine(problem.hint)}`,
  ]);
}

/** Which files differ between a commit and the folder as it is now, saved or not, told to git or not. */
import { compareIds } from "../terms/ids.ts";
import type { Repository } from "./repository.ts";
import { type GitAnswer, runGit } from "./run-git.ts";

export interface ChangedFile {
  /** Where it is now, or was where it is gone; relative to the repository, with `/`. */
  readonly file: string;
  readonly what: "added" | "changed" | "gone" | "renamed";
  /** Where a renamed file was before; null for any other. */
  readonly from: string | null;
  /** False for one that nobody told git of: it is in the folder, and in no request yet. */
  readonly inGit: boolean;
}

export type ChangedFiles =
  | { readonly ok: true; readonly files: readonly ChangedFile[] }
  | Extract<GitAnswer, { readonly ok: false }>;

const kinds = { A: "added", C: "added", D: "gone", M: "changed", R: "renamed" } as const;

/**
 * The files of the whole repository that differ, in the order of their names; what is to be ignored
 * is left out. A file that was moved and not yet told to git counts as one that is gone and one that
 * was added.
 *
 * @throws MachineError where git could not be run
 */
export async function changedFiles({ dir }: Repository, base: string): Promise<ChangedFiles> {
  const shown = ["--name-status", "-z", "--find-renames", "--no-relative", "--no-ext-diff"];
  const diff = await runGit(dir, ["diff", ...shown, "--ignore-submodules=dirty", base, "--"]);
  if (!diff.ok) return diff;
  const listed = ["--others", "--exclude-standard", "-z", "--full-name", "--", ":/"];
  const others = await runGit(dir, ["ls-files", ...listed]);
  if (!others.ok) return others;
  const found = new Map<string, ChangedFile>();
  for (const changed of [...readDiff(fields(diff.output)), ...readOthers(fields(others.output))])
    found.set(changed.file, joinBoth(found.get(changed.file), changed));
  return { ok: true, files: [...found.values()].sort((a, b) => compareIds(a.file, b.file)) };
}

/** What git ends with a null byte each. */
export function fields(output: Buffer): readonly string[] {
  return output.toString("utf8").split("\0").slice(0, -1);
}

function readDiff(told: readonly string[]): readonly ChangedFile[] {
  const files: ChangedFile[] = [];
  for (let i = 0; i < told.length; ) {
    const letter = told[i]?.charAt(0) ?? "";
    const [one = "", other = ""] = told.slice(i + 1, i + 3);
    const what = letter in kinds ? kinds[letter as keyof typeof kinds] : "changed";
    const isPair = letter === "R" || letter === "C";
    files.push({
      file: isPair ? other : one,
      what,
      from: letter === "R" ? one : null,
      inGit: true,
    });
    i += isPair ? 3 : 2;
  }
  return files;
}

function readOthers(names: readonly string[]): readonly ChangedFile[] {
  return names.map((file) => ({ file, what: "added", from: null, inGit: false }));
}

/** Told twice: taken out of git and still, or again, in the folder, or waiting for a merge. */
function joinBoth(one: ChangedFile | undefined, other: ChangedFile): ChangedFile {
  return one === undefined ? other : { ...other, what: "changed", inGit: true };
}

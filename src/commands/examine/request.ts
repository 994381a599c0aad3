/** A request as git has it: which files it changes, and the archive as it was before. */
import { existsSync } from "node:fs";
import { type ChangedFile, changedFiles } from "../../git/changed-files.ts";
import { commitFiles } from "../../git/commit-files.ts";
import type { Repository } from "../../git/repository.ts";
import { findRequestBase, type NoBase } from "../../git/request-base.ts";
import type { ArchiveFiles } from "../../reader/archive-files.ts";
import { WrongUsage } from "../failure.ts";

export interface Request {
  readonly repository: Repository;
  /** Relative to the repository. */
  readonly files: readonly ChangedFile[];
  /** The files of the archive that it changes, old names of renamed ones too; relative to the archive. */
  readonly changed: ReadonlySet<string>;
  readonly before: ArchiveFiles;
}

/**
 * Finds what changed since the request parted from a branch.
 *
 * @param archive the archive's folder
 * @param since a branch, a tag or a commit
 * @throws WrongUsage where git has nothing to compare with: says how to put that right
 */
export async function openRequest(archive: string, since: string): Promise<Request> {
  if (!existsSync(archive))
    throw new WrongUsage(`There is no folder “${archive}”. Name the archive with --archive.`);
  const found = await findRequestBase(archive, since);
  if (!found.ok) throw new WrongUsage(tellNoBase[found.why](since, archive) + quoted(found.said));
  const { repository, base } = found;
  const [files, before] = [
    await changedFiles(repository, base),
    await commitFiles(repository, base),
  ];
  if (!before.ok && before.why === "lacking") throw new WrongUsage(tellLacking(before.said));
  if (!before.ok || !files.ok)
    throw new WrongUsage(
      `Git could not compare the two.${quoted(saidBy(before) || saidBy(files))}`,
    );
  const names = files.files.flatMap(({ file, from }) => (from === null ? [file] : [file, from]));
  const { prefix } = repository;
  const changed = names.flatMap((name) =>
    name.startsWith(prefix) ? name.slice(prefix.length) : [],
  );
  return { repository, files: files.files, changed: new Set(changed), before: before.files };
}

const saidBy = (answer: { readonly ok: boolean; readonly said?: string }) => answer.said ?? "";

const tellNoBase: Readonly<Record<NoBase, (since: string, archive: string) => string>> = {
  "no-git": () =>
    "--since asks git what changed, and this computer has no git. Install it, or leave --since out.",
  "no-repository": (_, archive) =>
    `--since asks git what changed, and “${archive}” is in no repository that git can read. Name the archive with --archive, or leave --since out.`,
  "no-such-commit": (since) =>
    `There is no branch, tag or commit “${since}” here. “git branch --all” lists the branches; one that only the forge has comes with “git fetch origin”, and is called “origin/${since}” then.`,
  shallow: (since) =>
    `This clone has too little of its history to be compared with “${since}”. Run “git fetch --unshallow”; in a workflow, check out with the whole history (fetch-depth: 0, or GIT_DEPTH: 0).`,
  "nothing-in-common": (since) =>
    `“${since}” and what is checked out here have no history in common, so there is nothing to compare. Begin the branch anew from “${since}”, and copy the new files into it.`,
};

function tellLacking(file: string): string {
  return `This clone lacks what ${file} held before, so nothing can be compared. Clone it again without a filter.`;
}

function quoted(said: string): string {
  return said === "" ? "" : ` Git says: ${said}`;
}

/** What git says of an archive: asked while the archive is read. */
import { type CommitLog, readCommitLog } from "../../git/file-history.ts";
import { findRepository, type Repository, whyNoRepository } from "../../git/repository.ts";

/** What git said of an archive; null where it lies in no repository, or nothing was committed yet. */
export type GitSaid =
  | (CommitLog & { readonly repository: Repository })
  | { readonly refused: string }
  | null;

/** The last answer for each folder: a commit never changes, so only another one is asked for again. */
const known = new Map<string, { readonly asked: string; readonly said: GitSaid }>();

/** Asks git for the history of an archive. A site is made without it too, so nothing is thrown. */
export async function askGit(dir: string): Promise<GitSaid> {
  try {
    return await askAgainWhereNew(dir);
  } catch (error) {
    return { refused: (error as Error).message };
  }
}

async function askAgainWhereNew(dir: string): Promise<GitSaid> {
  const repository = await findRepository(dir);
  if (!repository) return noRepository(dir);
  const asked = JSON.stringify(repository);
  const before = known.get(dir);
  if (before?.asked === asked) return before.said;
  const log = await readCommitLog(repository);
  const said = log === null || "refused" in log ? log : { ...log, repository };
  known.clear();
  known.set(dir, { asked, said });
  return said;
}

async function noRepository(dir: string): Promise<GitSaid> {
  const { why, said } = await whyNoRepository(dir);
  return why === "distrusted" ? { refused: said } : null;
}

/** Why the pages of a site say no dates, and how to mend it; null where they do, or nothing was committed. */
export function whyNoDates(said: GitSaid): string | null {
  if (said === null) return null;
  if ("refused" in said)
    return `Pages do not say when a record changed: git could not tell (${said.refused}).`;
  return said.commits === null
    ? "Pages do not say when a record changed: this copy of the repository was fetched without its history (a shallow clone), and a date taken from it would be wrong. Fetch all of it: “git fetch --unshallow”; in a workflow “fetch-depth: 0”, or “GIT_DEPTH: 0” on GitLab."
    : null;
}

/** What a request is compared with: the last commit that it and another branch have in common. */
import {
  findRepository,
  type NoRepository,
  type Repository,
  resolveCommit,
  whyNoRepository,
} from "./repository.ts";
import { runGit } from "./run-git.ts";

/** Why there is nothing to compare with. */
export type NoBase =
  /** This machine has no git. */
  | "no-git"
  /** The archive lies in no repository, or in one that git does not trust. */
  | "no-repository"
  | "no-such-commit"
  /** A clone that stops short of what the two have in common. */
  | "shallow"
  | "nothing-in-common";

export type RequestBase =
  | {
      readonly ok: true;
      readonly repository: Repository;
      /** The commit with which the folder as it is now is compared, in full. */
      readonly base: string;
    }
  /** `said`: git's own words, where it had some. */
  | { readonly ok: false; readonly why: NoBase; readonly said: string };

/**
 * Finds the commit at which what is checked out parted from another branch: what was added to that
 * branch since then is no change of the request.
 *
 * @param dir the archive's folder
 * @param ref a branch, a tag or a commit
 * @throws MachineError where git could not be run
 */
export async function findRequestBase(dir: string, ref: string): Promise<RequestBase> {
  const repository = await findRepository(dir);
  if (!repository) return noRepository(await whyNoRepository(dir));
  const { head, isShallow } = repository;
  const named = await resolveCommit(dir, ref);
  if (named === null) return refused(isShallow ? "shallow" : "no-such-commit");
  if (head === null) return refused("nothing-in-common");
  const found = await runGit(dir, ["merge-base", "--end-of-options", named, head]);
  const base = found.ok ? found.output.toString("utf8").trim() : "";
  if (base !== "") return { ok: true, repository, base };
  return refused(isShallow ? "shallow" : "nothing-in-common");
}

function refused(why: NoBase, said = ""): RequestBase {
  return { ok: false, why, said };
}

function noRepository({ why, said }: NoRepository): RequestBase {
  return refused(why === "no-git" ? "no-git" : "no-repository", said);
}

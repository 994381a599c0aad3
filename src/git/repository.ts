/** The repository that an archive lies in, where it lies in one. */
import { runGit } from "./run-git.ts";

export interface Repository {
  /** The archive's folder, where git is run. */
  readonly dir: string;
  /** The archive's folder in the repository, with a `/` at its end; empty where it is the whole of it. */
  readonly prefix: string;
  /** The commit that is checked out, in full; null before the first. */
  readonly head: string | null;
  /** True for a clone without its history: then nothing may be said of when something was written. */
  readonly isShallow: boolean;
}

/**
 * Finds the repository of an archive.
 *
 * @param dir the archive's folder
 * @returns null where it lies in none, or this machine has no git
 * @throws MachineError where git could not be run
 */
export async function findRepository(dir: string): Promise<Repository | null> {
  const found = await runGit(dir, ["rev-parse", "--is-shallow-repository", "--show-prefix"]);
  if (!found.ok) return null;
  const [shallow, prefix = ""] = found.output.toString("utf8").split("\n");
  return { dir, prefix, head: await resolveCommit(dir, "HEAD"), isShallow: shallow === "true" };
}

/**
 * What git says where an archive lies in a repository that git does not trust, since the folder belongs
 * to another user: `findRepository` finds none there, and nobody would know why.
 *
 * @param dir the archive's folder
 * @returns null where that is not so
 * @throws MachineError where git could not be run
 */
export async function whyDistrusted(dir: string): Promise<string | null> {
  const asked = await runGit(dir, ["rev-parse", "--git-dir"]);
  if (asked.ok || !asked.said.includes("dubious ownership")) return null;
  return asked.said.replace(/\s+/gu, " ");
}

/**
 * The full name of a commit that somebody named by a branch, a tag or a part of it.
 *
 * @returns null where there is none
 * @throws MachineError where git could not be run
 */
export async function resolveCommit(dir: string, named: string): Promise<string | null> {
  const args = ["rev-parse", "--verify", "--quiet", "--end-of-options", `${named}^{commit}`];
  const found = await runGit(dir, args);
  return found.ok ? found.output.toString("utf8").trim() : null;
}

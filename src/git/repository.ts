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

/** Why `findRepository` finds none, and git's own words. */
export interface NoRepository {
  /** `distrusted`: there is one, whose folder belongs to another user. */
  readonly why: "no-git" | "no-repository" | "distrusted";
  readonly said: string;
}

/**
 * Why an archive lies in no repository that git can read.
 *
 * @param dir the archive's folder
 * @throws MachineError where git could not be run
 */
export async function whyNoRepository(dir: string): Promise<NoRepository> {
  const asked = await runGit(dir, ["rev-parse", "--git-dir"]);
  if (asked.ok) return { why: "no-repository", said: "" };
  const said = asked.said.replace(/\s+/gu, " ");
  if (asked.why === "missing") return { why: "no-git", said: "" };
  return { why: said.includes("dubious ownership") ? "distrusted" : "no-repository", said };
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

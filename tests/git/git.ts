/** Repositories for tests. */
import { execFileSync } from "node:child_process";

/** Runs git in a folder as an invented person, and gives what it printed. */
export function git(dir: string, ...args: readonly string[]): string {
  const as = ["-c", "user.name=Robin Clay", "-c", "user.email=robin@example.org"];
  const settled = ["-c", "init.defaultBranch=main", "-c", "commit.gpgsign=false"];
  return execFileSync("git", [...as, ...settled, ...args], { cwd: dir, encoding: "utf8" });
}

/** Commits all that is in a folder, on a day, and gives the commit. */
export function commitAll(dir: string, message: string, day = "2026-10-06"): string {
  git(dir, "add", "--all");
  const at = `${day}T12:00:00Z`;
  execFileSync(
    "git",
    [
      ...["-c", "user.name=Robin Clay", "-c", "user.email=robin@example.org"],
      ...["-c", "commit.gpgsign=false", "commit", "--quiet", "--allow-empty", "-m", message],
    ],
    { cwd: dir, env: { ...process.env, GIT_AUTHOR_DATE: at, GIT_COMMITTER_DATE: at } },
  );
  return git(dir, "rev-parse", "HEAD").trim();
}

import { chmodSync } from "node:fs";
import { join } from "node:path";
import { afterEach, expect, test, vi } from "vitest";
import { askGit, whyNoDates } from "../../src/commands/build/git-said.ts";
import { commitAll, git } from "../git/git.ts";
import { folderWith } from "./archives.ts";

afterEach(() => void vi.unstubAllEnvs());

test("where there is no git, no repository or no commit, nothing is said of it", async () => {
  const bare = await folderWith({ "a.md": "a" });
  expect(whyNoDates(await askGit(bare))).toBeNull();
  git(bare, "init", "--quiet");
  expect(whyNoDates(await askGit(bare))).toBeNull();
  vi.stubEnv("PATH", bare);
  expect(await askGit(bare)).toBeNull();
});

test("where git does not trust the folder, the build says so in git's words, with the mend", async () => {
  const folder = await folderWith({ "a.md": "a" });
  git(folder, "init", "--quiet");
  commitAll(folder, "one");
  // What git's own tests set for a folder of another user.
  vi.stubEnv("GIT_TEST_ASSUME_DIFFERENT_OWNER", "1");
  expect(whyNoDates(await askGit(folder))).toMatch(
    /^Pages do not say when a record changed: git could not tell \(fatal: detected dubious ownership .* git config --global --add safe\.directory .*\)\.$/u,
  );
});

test("where git cannot be run, the build goes on and says why pages have no dates", async () => {
  const folder = await folderWith({ "git/x": "", "a.md": "a" });
  const broken = await folderWith({ git: "#!/bin/nowhere" });
  chmodSync(join(broken, "git"), 0o755);
  git(folder, "init", "--quiet");
  commitAll(folder, "one");
  const before = await askGit(folder);
  expect(whyNoDates(before)).toBeNull();
  expect(await askGit(folder)).toBe(before);
  vi.stubEnv("PATH", broken);
  const said = await askGit(folder);
  expect(said === null || "refused" in said).toBe(true);
});

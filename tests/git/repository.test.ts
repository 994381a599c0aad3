import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { afterEach, describe, expect, test } from "vitest";
import { findRepository, resolveCommit } from "../../src/git/repository.ts";
import { runGit } from "../../src/git/run-git.ts";
import { writeFolder } from "../support/archive-folder.ts";
import { removeFolder } from "../support/remove-folder.ts";
import { commitAll, git } from "./git.ts";

const made: string[] = [];
afterEach(async () => {
  for (const dir of made.splice(0)) await removeFolder(dir);
});

async function folder(files: Readonly<Record<string, string>> = { "a.md": "a" }): Promise<string> {
  const dir = await writeFolder(files);
  made.push(dir);
  return dir;
}

describe("a repository", () => {
  test("is found from the archive's folder, with the folder's place in it", async () => {
    const dir = await folder({ "studio/tiles/a.md": "a" });
    git(dir, "init", "--quiet");
    const head = commitAll(dir, "one");
    const archive = join(dir, "studio");
    const expected = { dir: archive, prefix: "studio/", head, isShallow: false };
    expect(await findRepository(archive)).toEqual(expected);
    expect(await findRepository(dir)).toMatchObject({ prefix: "" });
  });

  test("is none where no folder above is one", async () => {
    expect(await findRepository(await folder())).toBeNull();
  });

  test("has no commit before the first", async () => {
    const dir = await folder();
    git(dir, "init", "--quiet");
    expect(await findRepository(dir)).toMatchObject({ head: null, isShallow: false });
  });

  test("says of itself that it is shallow", async () => {
    const dir = await folder();
    git(dir, "init", "--quiet");
    commitAll(dir, "one");
    commitAll(dir, "two");
    const shallow = join(await folder(), "clone");
    git(dir, "clone", "--quiet", "--depth", "1", `file://${dir}`, shallow);
    expect(await findRepository(shallow)).toMatchObject({ isShallow: true });
  });
});

describe("git", () => {
  test("names a commit by its branch, and none by an option or a name that is nobody's", async () => {
    const dir = await folder();
    git(dir, "init", "--quiet");
    const head = commitAll(dir, "one");
    expect(await resolveCommit(dir, "main")).toBe(head);
    expect(await resolveCommit(dir, "--help")).toBeNull();
    expect(await resolveCommit(dir, "nowhere")).toBeNull();
  });

  test("runs no program that the repository's settings name", async () => {
    const dir = await folder();
    git(dir, "init", "--quiet");
    commitAll(dir, "one");
    mkdirSync(join(dir, "hooks"));
    git(dir, "config", "core.fsmonitor", "touch ran; true");
    git(dir, "config", "core.pager", "touch ran; cat");
    await runGit(dir, ["status", "--porcelain"]);
    await runGit(dir, ["log", "-1"]);
    const listed = await runGit(dir, ["status", "--porcelain"]);
    expect(listed).toMatchObject({ ok: true });
    expect(listed.ok && listed.output.toString("utf8")).not.toContain("ran");
  });

  test("that is refused says why, and throws nothing", async () => {
    const answer = await runGit(await folder(), ["log"]);
    expect(answer).toMatchObject({ ok: false, why: "refused" });
    expect(!answer.ok && answer.said).toMatch(/not a git repository/iu);
  });
});

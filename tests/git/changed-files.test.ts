import { renameSync } from "node:fs";
import { join } from "node:path";
import { afterEach, describe, expect, test } from "vitest";
import { changedFiles } from "../../src/git/changed-files.ts";
import { findRequestBase } from "../../src/git/request-base.ts";
import { type Files, writeFolder, writeInto } from "../support/archive-folder.ts";
import { removeFolder } from "../support/remove-folder.ts";
import { commitAll, git } from "./git.ts";

const made: string[] = [];
afterEach(async () => {
  for (const dir of made.splice(0)) await removeFolder(dir);
});

async function folder(files: Files): Promise<string> {
  const dir = await writeFolder(files);
  made.push(dir);
  return dir;
}

async function repositoryOf(files: Files): Promise<string> {
  const dir = await folder(files);
  git(dir, "init", "--quiet");
  commitAll(dir, "one");
  return dir;
}

async function changedSince(dir: string, ref: string): Promise<readonly string[]> {
  const found = await findRequestBase(dir, ref);
  if (!found.ok) throw new Error(found.why);
  const changed = await changedFiles(found.repository, found.base);
  if (!changed.ok) throw new Error(changed.said);
  return changed.files.map(({ file, what, from }) => [what, from, file].filter(Boolean).join(" "));
}

const why = async (dir: string, ref: string) => {
  const found = await findRequestBase(dir, ref);
  return found.ok ? "found" : found.why;
};

describe("the files that differ from a commit", () => {
  test("are told by what became of them, saved or not, told to git or not", async () => {
    const long = "a photograph of some length\n".repeat(9);
    const dir = await repositoryOf({
      ".gitignore": "site/\n",
      "tiles/gone.md": "gone\n",
      "tiles/moved.jpg": long,
      "tiles/same.md": "same\n",
      "tiles/saved.md": "saved\n",
      "tiles/unsaved.md": "unsaved\n",
    });
    git(dir, "switch", "--quiet", "-c", "request");
    await writeInto(dir, { "tiles/saved.md": "saved, and changed\n", "tiles/new.md": "new\n" });
    git(dir, "rm", "--quiet", "tiles/gone.md");
    git(dir, "mv", "tiles/moved.jpg", "tiles/Móved “to”.jpg");
    commitAll(dir, "two");
    await writeInto(dir, {
      "site/index.html": "ignored",
      "tiles/unsaved.md": "changed and not saved\n",
      "tiles/untold.md": "nobody told git\n",
    });
    expect(await changedSince(dir, "main")).toEqual([
      "gone tiles/gone.md",
      "renamed tiles/moved.jpg tiles/Móved “to”.jpg",
      "added tiles/new.md",
      "changed tiles/saved.md",
      "changed tiles/unsaved.md",
      "added tiles/untold.md",
    ]);
  });

  test("are those of the whole repository, asked from a folder in it", async () => {
    const dir = await repositoryOf({ "studio/tiles/a.md": "a\n", "package.json": "{}\n" });
    await writeInto(dir, { "package.json": "{ }\n", ".github/x.yml": "x\n", "studio/b.md": "b\n" });
    expect(await changedSince(join(dir, "studio"), "main")).toEqual([
      "added .github/x.yml",
      "changed package.json",
      "added studio/b.md",
    ]);
  });

  test("are not those that came to the other branch meanwhile", async () => {
    const dir = await repositoryOf({ "a.md": "a\n" });
    git(dir, "switch", "--quiet", "-c", "request");
    await writeInto(dir, { "mine.md": "mine\n" });
    commitAll(dir, "mine");
    git(dir, "switch", "--quiet", "main");
    await writeInto(dir, { "theirs.md": "theirs\n" });
    commitAll(dir, "theirs");
    git(dir, "switch", "--quiet", "request");
    expect(await changedSince(dir, "main")).toEqual(["added mine.md"]);
  });

  test("count as gone and added where a file was moved behind git's back", async () => {
    const dir = await repositoryOf({ "a.md": "a\n" });
    renameSync(join(dir, "a.md"), join(dir, "b.md"));
    expect(await changedSince(dir, "HEAD")).toEqual(["gone a.md", "added b.md"]);
  });

  test("count as changed where git was told to forget a file that is still there", async () => {
    const dir = await repositoryOf({ "a.md": "a\n" });
    git(dir, "rm", "--quiet", "--cached", "a.md");
    expect(await changedSince(dir, "HEAD")).toEqual(["changed a.md"]);
  });
});

describe("what a request is compared with", () => {
  test("is nothing where there is no repository, no such branch, or no commit yet", async () => {
    expect(await why(await folder({ "a.md": "a" }), "main")).toBe("no-repository");
    const empty = await folder({ "a.md": "a" });
    git(empty, "init", "--quiet");
    expect(await why(empty, "HEAD")).toBe("no-such-commit");
    expect(await why(await repositoryOf({ "a.md": "a" }), "nowhere")).toBe("no-such-commit");
    expect(await why(await repositoryOf({ "a.md": "a" }), "--output=x")).toBe("no-such-commit");
  });

  test("is nothing where two branches have no history in common", async () => {
    const dir = await repositoryOf({ "a.md": "a" });
    git(dir, "switch", "--quiet", "--orphan", "apart");
    commitAll(dir, "apart");
    expect(await why(dir, "main")).toBe("nothing-in-common");
  });

  test("is nothing where the clone stops short of it", async () => {
    const dir = await repositoryOf({ "a.md": "a" });
    git(dir, "switch", "--quiet", "-c", "request");
    commitAll(dir, "mine");
    const clone = join(await folder({ "x.md": "x" }), "clone");
    const origin = `file://${dir}`;
    git(dir, "clone", "--quiet", "--depth", "1", "--no-single-branch", origin, clone);
    await writeInto(dir, { "b.md": "b" });
    expect(await why(clone, "origin/main")).toBe("shallow");
    expect(await why(clone, "nowhere")).toBe("shallow");
    git(clone, "fetch", "--quiet", "--unshallow");
    expect(await why(clone, "origin/main")).toBe("found");
  });
});

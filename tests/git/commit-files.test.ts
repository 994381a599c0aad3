import { rmSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { afterEach, describe, expect, test } from "vitest";
import { folderFiles } from "../../src/archive/folder-files.ts";
import { commitFiles } from "../../src/git/commit-files.ts";
import { findRepository } from "../../src/git/repository.ts";
import type { ArchiveFiles } from "../../src/reader/archive-files.ts";
import { type Files, writeFolder, writeInto } from "../support/archive-folder.ts";
import { removeFolder } from "../support/remove-folder.ts";
import { commitAll, git } from "./git.ts";

const made: string[] = [];
afterEach(async () => {
  for (const dir of made.splice(0)) await removeFolder(dir);
});

async function repositoryOf(files: Files): Promise<string> {
  const dir = await writeFolder(files);
  made.push(dir);
  git(dir, "init", "--quiet");
  return dir;
}

async function filesAt(archive: string, commit: string): Promise<ArchiveFiles> {
  const repository = await findRepository(archive);
  if (!repository) throw new Error("no repository");
  const found = await commitFiles(repository, commit);
  if (!found.ok) throw new Error(found.why);
  return found.files;
}

function textOf(files: ArchiveFiles, file: string): string {
  const contents = files.read(file, 1000);
  return "bytes" in contents ? new TextDecoder().decode(contents.bytes) : "";
}

describe("an archive at a commit", () => {
  test("lists and reads what lay there, whatever the folder holds now", async () => {
    const dir = await repositoryOf({
      "studio.yaml": "format: 1",
      "tiles/A-1.md": "before",
      "tiles/A-1.jpg": "picture",
      "tiles/evening/set.md": "set",
    });
    const commit = commitAll(dir, "one");
    await writeInto(dir, { "tiles/A-1.md": "after", "tiles/A-2.md": "new" });
    commitAll(dir, "two");
    const files = await filesAt(dir, commit);
    expect(files.list("")).toEqual({ files: ["studio.yaml"], folders: ["tiles"], problems: [] });
    expect(files.list("tiles")).toMatchObject({
      files: ["A-1.jpg", "A-1.md"],
      folders: ["evening"],
    });
    expect(textOf(files, "tiles/A-1.md")).toBe("before");
    expect(files.list("nowhere")).toBeNull();
    expect(files.read("tiles/A-1.md", 3)).toEqual({ tooLarge: 6 });
    expect(files.read("tiles/A-1.jpg", 1000)).toEqual({ tooLarge: 7 });
  });

  test("is that of its own folder, under names with any characters", async () => {
    const names = ["Tòn ×\n“1”.md", "-x.md", "*.md", ":(top).md"];
    const dir = await repositoryOf({
      "other.md": "other",
      ...Object.fromEntries(names.map((name) => [`studio\tä/tiles/${name}`, name])),
    });
    const commit = commitAll(dir, "one");
    const files = await filesAt(join(dir, "studio\tä"), commit);
    expect(files.list("")).toEqual({ files: [], folders: ["tiles"], problems: [] });
    expect(files.list("tiles")?.files).toEqual([...names].sort());
    for (const name of names) expect(textOf(files, `tiles/${name}`)).toBe(name);
  });

  test("is empty where its folder was not there yet", async () => {
    const dir = await repositoryOf({ "a.md": "a" });
    const commit = commitAll(dir, "one");
    await writeInto(dir, { "studio/tiles/a.md": "a" });
    const files = await filesAt(join(dir, "studio"), commit);
    expect(files.list("")).toEqual({ files: [], folders: [], problems: [] });
  });

  test("treats links as a folder on disk does", async () => {
    const dir = await repositoryOf({ "studio.yaml": "s", "tiles/A-1.md": "one", "README.md": "r" });
    const links = {
      "tiles/chain.md": "same.md",
      "tiles/circle.md": "circle.md",
      "tiles/folder": "../tiles",
      "tiles/gone.md": "nowhere.md",
      "tiles/outside.md": "../README.md",
      "tiles/same.md": "A-1.md",
    };
    for (const [link, target] of Object.entries(links)) symlinkSync(target, join(dir, link));
    const commit = commitAll(dir, "one");
    const files = await filesAt(dir, commit);
    expect(files.list("tiles")).toEqual(folderFiles(dir).list("tiles"));
    expect(files.list("tiles")?.problems.map(({ file, code }) => `${file} ${code}`)).toEqual([
      "tiles/circle.md broken-link",
      "tiles/folder link-to-folder",
      "tiles/gone.md broken-link",
      "tiles/outside.md link-outside",
    ]);
    expect(textOf(files, "tiles/chain.md")).toBe("one");
  });

  test("holds nothing of the machine it is read on, nor of a repository within it", async () => {
    const dir = await repositoryOf({ "studio.yaml": "s", "tiles/A-1.md": "one" });
    symlinkSync("/etc/hostname", join(dir, "tiles/host.md"));
    const inner = await repositoryOf({ "x.md": "x" });
    commitAll(inner, "inner");
    git(
      dir,
      "-c",
      "protocol.file.allow=always",
      "submodule",
      "--quiet",
      "add",
      inner,
      "tiles/inner",
    );
    const commit = commitAll(dir, "one");
    const found = (await filesAt(dir, commit)).list("tiles");
    expect(found?.files).toEqual(["A-1.md"]);
    expect(found?.problems.map(({ file, code }) => `${file} ${code}`)).toEqual([
      "tiles/host.md link-outside",
      "tiles/inner not-a-file",
    ]);
  });

  test("is not given where the clone lacks some of it", async () => {
    const dir = await repositoryOf({ "tiles/A-1.md": "one" });
    const commit = commitAll(dir, "one");
    const object = git(dir, "rev-parse", "HEAD:tiles/A-1.md").trim();
    rmSync(join(dir, ".git/objects", object.slice(0, 2), object.slice(2)));
    const repository = await findRepository(dir);
    const found = repository && (await commitFiles(repository, commit));
    expect(found).toEqual({ ok: false, why: "lacking", said: "tiles/A-1.md" });
  });
});

/** Renaming: all or none, and nothing is overwritten. */
import fs from "node:fs";
import path from "node:path";
import { afterEach, describe, expect, it, vi } from "vitest";
import { MachineError } from "../../src/disk/machine-error.ts";
import { renameFiles } from "../../src/disk/rename-file.ts";
import { temporaryFolder, writeFiles } from "../archive/archives.ts";

function folderWith(files: Readonly<Record<string, string>>): string {
  const dir = temporaryFolder();
  writeFiles(dir, files);
  return dir;
}

function filesOf(dir: string): Record<string, string> {
  const names = fs.readdirSync(dir, { recursive: true, encoding: "utf8" });
  return Object.fromEntries(
    names
      .filter((name) => fs.statSync(path.join(dir, name)).isFile())
      .sort()
      .map((name) => [name, fs.readFileSync(path.join(dir, name), "utf8")]),
  );
}

afterEach(() => vi.restoreAllMocks());

describe("renaming files", () => {
  it("gives each its new name", () => {
    const dir = folderWith({ "a 1.md": "one", "sub/a 1.jpg": "two" });
    const renamings = [
      { from: "a 1.md", to: "a-1.md" },
      { from: "sub/a 1.jpg", to: "sub/a-1.jpg" },
    ];
    expect(renameFiles(dir, renamings)).toBeUndefined();
    expect(filesOf(dir)).toEqual({ "a-1.md": "one", "sub/a-1.jpg": "two" });
  });

  it("leaves all as they were where one name is taken, or one file is gone", () => {
    const files = { "a.md": "one", "b.md": "two", "c.md": "three" };
    const dir = folderWith(files);
    const first = { from: "a.md", to: "x.md" };
    expect(renameFiles(dir, [first, { from: "b.md", to: "c.md" }])).toEqual({
      because: "taken",
      file: "c.md",
    });
    expect(filesOf(dir)).toEqual(files);
    expect(renameFiles(dir, [first, { from: "nowhere.md", to: "y.md" }])).toEqual({
      because: "gone",
      file: "nowhere.md",
    });
    expect(filesOf(dir)).toEqual(files);
  });

  it("copies where a disk knows no second names, and overwrites nothing there either", () => {
    const dir = folderWith({ "a.md": "one", "b.md": "two" });
    vi.spyOn(fs, "linkSync").mockImplementation(() => {
      throw Object.assign(new Error("not permitted"), { code: "EPERM" });
    });
    expect(renameFiles(dir, [{ from: "a.md", to: "b.md" }])?.because).toBe("taken");
    expect(renameFiles(dir, [{ from: "a.md", to: "c.md" }])).toBeUndefined();
    expect(filesOf(dir)).toEqual({ "b.md": "two", "c.md": "one" });
  });

  it("never reaches out of the archive, by a path or by a link", () => {
    const dir = folderWith({ "a.md": "one" });
    const outside = folderWith({ "b.md": "two" });
    fs.symlinkSync(outside, path.join(dir, "out"));
    expect(() => renameFiles(dir, [{ from: "a.md", to: "out/a.md" }])).toThrow(MachineError);
    expect(() => renameFiles(dir, [{ from: "out/b.md", to: "b.md" }])).toThrow(MachineError);
    expect(filesOf(outside)).toEqual({ "b.md": "two" });
  });
});

/** One writer for whatever takes another file's place: whole, or as if nothing had happened. */
import fs from "node:fs";
import path from "node:path";
import { afterEach, describe, expect, it, vi } from "vitest";
import { replaceWhole, writeWhole } from "../../src/disk/write-whole.ts";
import { temporaryFolder, writeFiles } from "../archive/archives.ts";

function folderWith(files: Readonly<Record<string, string>>): string {
  const dir = temporaryFolder();
  writeFiles(dir, files);
  return dir;
}

const noRoom = Object.assign(new Error("ENOSPC: no space left on device"), { code: "ENOSPC" });
const fail = (): never => {
  throw noRoom;
};

afterEach(() => vi.restoreAllMocks());

describe("a file written whole", () => {
  it("makes the folder it lies in, and leaves nothing beside it", () => {
    const dir = temporaryFolder();
    writeWhole(path.join(dir, "a/b/seen"), "whole");
    expect(fs.readdirSync(path.join(dir, "a/b"))).toEqual(["seen"]);
    expect(fs.readFileSync(path.join(dir, "a/b/seen"), "utf8")).toBe("whole");
  });

  it.each(["openSync", "writeFileSync", "fsyncSync", "closeSync", "renameSync"] as const)(
    "leaves the old one, and nothing half written, where %s finds the disk full",
    (call) => {
      const dir = folderWith({ "TB-1.md": "old" });
      vi.spyOn(fs, call).mockImplementation(fail);
      expect(() => replaceWhole(path.join(dir, "TB-1.md"), "new")).toThrow(noRoom);
      vi.restoreAllMocks();
      expect(fs.readdirSync(dir)).toEqual(["TB-1.md"]);
      expect(fs.readFileSync(path.join(dir, "TB-1.md"), "utf8")).toBe("old");
    },
  );

  it("is on the disk before the old one is let go, where somebody wrote it", () => {
    const file = path.join(folderWith({ "TB-1.md": "old" }), "TB-1.md");
    const calls: string[] = [];
    const sync = fs.fsyncSync;
    vi.spyOn(fs, "fsyncSync").mockImplementation((opened) => {
      calls.push(fs.readFileSync(file, "utf8"));
      sync(opened);
    });
    replaceWhole(file, "new");
    expect([calls, fs.readFileSync(file, "utf8")]).toEqual([["old"], "new"]);
  });
});

describe.skipIf(process.platform === "win32")("on a disk with permissions and links", () => {
  it("has the permissions asked for from its first byte, whatever the process gives new files", () => {
    const dir = temporaryFolder();
    const modes: number[] = [];
    const write = fs.writeFileSync;
    vi.spyOn(fs, "writeFileSync").mockImplementation((opened, ...rest) => {
      modes.push(fs.fstatSync(opened as number).mode & 0o777);
      write(opened, ...rest);
    });
    writeWhole(path.join(dir, "key"), "secret", { mode: 0o600 });
    writeWhole(path.join(dir, "shared"), "for the group", { mode: 0o664 });
    expect(modes).toEqual([0o600, 0o664]);
    expect(fs.statSync(path.join(dir, "shared")).mode & 0o777).toBe(0o664);
  });

  it("keeps permissions, and a link stays one", () => {
    const dir = folderWith({ "sets/real.md": "old" });
    const [real, link] = [path.join(dir, "sets/real.md"), path.join(dir, "link.md")];
    fs.chmodSync(real, 0o640);
    fs.symlinkSync(real, link);
    replaceWhole(link, "new");
    expect(fs.lstatSync(link).isSymbolicLink()).toBe(true);
    expect(fs.readFileSync(real, "utf8")).toBe("new");
    expect(fs.statSync(real).mode & 0o777).toBe(0o640);
  });
});

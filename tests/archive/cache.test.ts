import fs from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { folderCache } from "../../src/archive/folder-cache.ts";
import type { ParsedText } from "../../src/reader/parsed-text.ts";
import { least, read, record, sound, tell, temporaryFolder, writeFiles } from "./archives.ts";

const parsed = (name: string): ParsedText => ({
  source: { name },
  notes: "",
  blanks: [],
  faults: [],
});

function filesIn(dir: string): string[] {
  return fs
    .readdirSync(dir, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.join(entry.parentPath, entry.name))
    .sort();
}

describe("a cache in a folder", () => {
  it("remembers what was put, from one program to the next", () => {
    const dir = temporaryFolder();
    const first = folderCache(dir);
    expect(first.get("aa11")).toBeUndefined();
    first.put("aa11", parsed("soot"));
    first.put("bb22", parsed("tidewrack"));
    first.save();
    const second = folderCache(dir);
    expect(second.get("aa11")).toEqual(parsed("soot"));
    expect(second.get("bb22")).toEqual(parsed("tidewrack"));
    expect(second.get("aa12")).toBeUndefined();
  });

  it("forgets what was not asked for", () => {
    const dir = temporaryFolder();
    const first = folderCache(dir);
    first.put("aa11", parsed("soot"));
    first.put("aa22", parsed("plum"));
    first.save();
    const second = folderCache(dir);
    second.get("aa22");
    second.save();
    const third = folderCache(dir);
    expect([third.get("aa11"), third.get("aa22")]).toEqual([undefined, parsed("plum")]);
  });

  it("writes only what changed, and leaves nothing unfinished", () => {
    const dir = temporaryFolder();
    const first = folderCache(dir);
    for (const hash of ["aa11", "bb22", "cc33"]) first.put(hash, parsed(hash));
    first.save();
    const [aa, bb, cc] = filesIn(dir).map((file) => fs.statSync(file).ino);
    const second = folderCache(dir);
    for (const hash of ["aa11", "bb22", "cc33"]) second.get(hash);
    second.put("bb99", parsed("new"));
    second.save();
    expect(filesIn(dir).map((file) => path.basename(file))).toEqual(["aa", "bb", "cc"]);
    const after = filesIn(dir).map((file) => fs.statSync(file).ino);
    expect(after[0]).toBe(aa);
    expect(after[1]).not.toBe(bb);
    expect(after[2]).toBe(cc);
  });

  it.each([
    ["cut short", (text: string) => text.slice(0, -10)],
    ["changed in one letter", (text: string) => text.replace("soot", "zoot")],
    ["emptied", () => ""],
    ["replaced by something else", () => "hello\n[1, 2]"],
  ])("heals a file that was %s", (_, damage) => {
    const dir = temporaryFolder();
    const first = folderCache(dir);
    first.put("aa11", parsed("soot"));
    first.save();
    const [file = ""] = filesIn(dir);
    fs.writeFileSync(file, damage(fs.readFileSync(file, "utf8")));
    const second = folderCache(dir);
    expect(second.get("aa11")).toBeUndefined();
    second.put("aa11", parsed("soot"));
    second.save();
    expect(folderCache(dir).get("aa11")).toEqual(parsed("soot"));
  });
});

describe("an archive read a second time", () => {
  it("is the same, and only what changed is read anew", async () => {
    const dir = temporaryFolder();
    const cache = temporaryFolder();
    writeFiles(dir, {
      ...least,
      "tiles/WL-002.md": record("layers:\n  - glaze: sot # x", "Notes."),
    });
    const first = await read(dir, cache);
    const before = new Map(filesIn(cache).map((file) => [file, fs.statSync(file).ino]));
    expect(before.size).toBeGreaterThanOrEqual(4);
    const second = await read(dir, cache);
    expect(second.archive).toEqual(first.archive);
    expect(tell(second)).toBe(tell(first));
    expect(filesIn(cache).map((file) => fs.statSync(file).ino)).toEqual([...before.values()]);
    writeFiles(dir, { "tiles/WL-002.md": record("layers: [{glaze: soot}]", "Mended.") });
    const third = sound(await read(dir, cache));
    expect(third.tiles.get("wl-002")?.notes).toBe("Mended.");
  });

  it("tells faults of a file's form again, at their lines", async () => {
    const dir = temporaryFolder();
    const cache = temporaryFolder();
    writeFiles(dir, { ...least, "tiles/WL-002.md": "---\nlayers:\n\t- glaze: soot\n---\n" });
    const first = tell(await read(dir, cache));
    expect(first).toContain("tiles/WL-002.md:3:1 error");
    expect(tell(await read(dir, cache))).toBe(first);
  });

  it("never takes a file's form for another: the same words in studio.yaml and in a tile", async () => {
    const dir = temporaryFolder();
    const cache = temporaryFolder();
    const studio = "---\nformat: 1\nstudio: Weir Lane\n---\n";
    writeFiles(dir, { ...least, "studio.yaml": studio, "tiles/WL-002.md": studio });
    const first = tell(await read(dir, cache));
    expect(first).toContain("studio.yaml:4:1 error");
    expect(tell(await read(dir, cache))).toBe(first);
  });
});

import fs, { chmodSync, statSync } from "node:fs";
import { lstat, mkdir, mkdtemp, readdir, readFile, symlink, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { inspectPicture } from "../../src/photos/inspect.ts";
import { scrubFile } from "../../src/photos/scrub/scrub-file.ts";
import { removeFolder } from "../support/remove-folder.ts";
import { encodePages, encodePlanted, encodeTile, FORMATS } from "./pictures.ts";

let folder: string;

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "tilebook-scrub-"));
});

afterEach(async () => {
  vi.restoreAllMocks();
  await removeFolder(folder);
});

async function plant(name: string, bytes: Uint8Array): Promise<string> {
  const path = join(folder, name);
  await writeFile(path, bytes);
  return path;
}

async function tracesIn(path: string) {
  const inspection = await inspectPicture(await readFile(path));
  return "facts" in inspection ? inspection.facts.traces : inspection.fault.code;
}

describe("a photograph scrubbed where it lies", () => {
  it.each(FORMATS)("gives nothing away any more: %s", async (format) => {
    const path = await plant(`TB-1.${format}`, await encodePlanted(format));
    expect(await scrubFile(path)).toMatchObject({ outcome: "scrubbed" });
    expect(await tracesIn(path)).toEqual([]);
    expect(await scrubFile(path)).toEqual({ outcome: "clean" });
    expect(await readdir(folder)).toEqual([`TB-1.${format}`]);
  });

  it("is not written where there is nothing to remove", async () => {
    const path = await plant("TB-1.jpg", await encodeTile("jpeg"));
    const { ino, mtimeMs } = statSync(path);
    expect(await scrubFile(path)).toEqual({ outcome: "clean" });
    expect(statSync(path)).toMatchObject({ ino, mtimeMs });
  });

  it("is left as it was where something might be lost", async () => {
    const pages = await encodePages("tiff");
    const path = await plant("TB-1.tiff", pages);
    expect(await scrubFile(path)).toMatchObject({
      outcome: "fault",
      fault: { code: "picture-not-scrubbed" },
    });
    expect(pages.equals(await readFile(path))).toBe(true);
  });

  it("is left as it was where it is no picture", async () => {
    const path = await plant("TB-1.jpg", Buffer.from("a note"));
    expect(await scrubFile(path)).toMatchObject({ outcome: "fault" });
    expect(await readFile(path, "utf8")).toBe("a note");
  });
});

describe.skipIf(process.platform === "win32")("on a disk with permissions and links", () => {
  it("a photograph keeps its permissions", async () => {
    const path = await plant("TB-1.jpg", await encodePlanted("jpeg"));
    chmodSync(path, 0o640);
    await scrubFile(path);
    expect(statSync(path).mode & 0o777).toBe(0o640);
  });

  it("a link stays one, and what it leads to is scrubbed", async () => {
    await mkdir(join(folder, "originals"));
    const original = await plant("originals/a.jpg", await encodePlanted("jpeg"));
    const link = join(folder, "TB-1.jpg");
    await symlink(original, link);
    await scrubFile(link);
    expect((await lstat(link)).isSymbolicLink()).toBe(true);
    expect(await tracesIn(original)).toEqual([]);
  });

  it("a photograph that the disk refuses to replace is still there, whole", async () => {
    const planted = await encodePlanted("png");
    const path = await plant("TB-1.png", planted);
    const failing = new Error("No room");
    vi.spyOn(fs, "fsyncSync").mockImplementation(() => {
      throw failing;
    });
    await expect(scrubFile(path)).rejects.toBe(failing);
    expect(planted.equals(await readFile(path))).toBe(true);
    expect(await readdir(folder)).toEqual(["TB-1.png"]);
  });
});

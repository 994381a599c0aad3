import fs from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { writeNew } from "../../src/archive/write-new.ts";
import { failOn } from "../publish/failing-disk.ts";
import { temporaryFolder, writeFiles } from "./archives.ts";

function folderWith(files: Readonly<Record<string, string>>): string {
  const dir = temporaryFolder();
  writeFiles(dir, files);
  return dir;
}

/** Every file and folder, hidden ones too. */
function allIn(dir: string): readonly string[] {
  return fs.readdirSync(dir, { recursive: true }).map(String).sort();
}

const two = [
  { path: "tiles/autumn/TB-1.md", content: "one" },
  { path: "tiles/autumn/TB-1.jpg", content: new Uint8Array([1, 2]) },
];

describe("new files of an archive", () => {
  it("are written with the folders they lie in, and nothing beside them", () => {
    const dir = folderWith({ "studio.yaml": "" });
    expect(writeNew(dir, two)).toBeUndefined();
    expect(allIn(dir)).toEqual([
      ...["studio.yaml", "tiles", "tiles/autumn", "tiles/autumn/TB-1.jpg", "tiles/autumn/TB-1.md"],
    ]);
    expect(fs.readFileSync(path.join(dir, "tiles/autumn/TB-1.md"), "utf8")).toBe("one");
    expect([...fs.readFileSync(path.join(dir, "tiles/autumn/TB-1.jpg"))]).toEqual([1, 2]);
  });

  it("are not written, none of them, where one is there already", () => {
    const dir = folderWith({ "tiles/autumn/TB-1.jpg": "there" });
    expect(writeNew(dir, two)).toEqual({ because: "taken", file: "tiles/autumn/TB-1.jpg" });
    expect(allIn(dir)).toEqual(["tiles", "tiles/autumn", "tiles/autumn/TB-1.jpg"]);
    expect(fs.readFileSync(path.join(dir, "tiles/autumn/TB-1.jpg"), "utf8")).toBe("there");
  });

  it("are taken back, with their folders, where the disk is full in the middle", () => {
    const dir = folderWith({ "studio.yaml": "" });
    for (const call of ["link", "copyFile"] as const)
      failOn(call, "ENOSPC", ([, to]) => to.endsWith("TB-1.jpg"));
    expect(() => writeNew(dir, two)).toThrow(/ENOSPC/u);
    expect(allIn(dir)).toEqual(["studio.yaml"]);
  });

  it("leave what another program puts there in the meantime", () => {
    const dir = folderWith({ "studio.yaml": "" });
    failOn("link", "EEXIST", ([, to]) => {
      if (to.endsWith("TB-1.jpg")) fs.writeFileSync(to, "theirs");
      return to.endsWith("TB-1.jpg");
    });
    expect(writeNew(dir, two)).toEqual({ because: "taken", file: "tiles/autumn/TB-1.jpg" });
    expect(allIn(dir)).toEqual([
      ...["studio.yaml", "tiles", "tiles/autumn", "tiles/autumn/TB-1.jpg"],
    ]);
    expect(fs.readFileSync(path.join(dir, "tiles/autumn/TB-1.jpg"), "utf8")).toBe("theirs");
  });

  it.skipIf(process.platform === "win32")("never follow a link out of the archive", () => {
    const [dir, elsewhere] = [folderWith({ "studio.yaml": "" }), temporaryFolder()];
    fs.symlinkSync(elsewhere, path.join(dir, "tiles"));
    expect(writeNew(dir, two)).toEqual({ because: "outside", file: "tiles/autumn/TB-1.md" });
    expect(allIn(elsewhere)).toEqual([]);
  });
});

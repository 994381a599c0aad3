/** `tilebook rename`: a tile gets another code, and nothing that named it is left behind. */
import { appendFile, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, test, vi } from "vitest";
import { rename } from "../../src/commands/rename/rename.ts";
import { photograph } from "../support/archive-folder.ts";
import { archiveWith, errorsOf } from "./archives.ts";
import { sumsOf } from "./site-files.ts";
import { tilebook } from "./tilebook.ts";

const tile = "---\nclay: buff\nlayers:\n  - {glaze: soot, coats: 2}\n---\nWren was here.\n";

const load = [
  "---",
  "on: 2026-03-01",
  "kind: glaze",
  "cone: 6",
  "tiles:",
  "  top: [RN-1..RN-5, RN-9]   # the small shelf",
  "  middle: RN-8",
  "  bottom:",
  "    # front to back",
  "    - RN-6..RN-7",
  "---",
  "RN-3 stood at the front; RN-30 was never made.",
  "",
].join("\n");

async function shelfArchive(): Promise<string> {
  const codes = [1, 2, 3, 4, 5, 6, 7, 8, 9];
  return archiveWith({
    "tiles/firings/g-9.md": load,
    "tiles/shelf/set.md": "---\nname: Shelf\nkind: series\ncontrol: RN-6   # the twin\n---\n",
    ...Object.fromEntries(codes.map((n) => [`tiles/shelf/RN-${n}.md`, tile])),
    "tiles/shelf/RN-3.jpg": await photograph("#4b4644"),
  });
}

const read = (archive: string, file: string) => readFile(join(archive, file), "utf8");

/** What is told from now on, line by line. */
function tellsOf(...ways: readonly ("log" | "error")[]): () => readonly string[] {
  const lines: string[] = [];
  for (const way of ways)
    vi.spyOn(console, way).mockImplementation((words) => void lines.push(...words.split("\n")));
  return () => lines;
}

describe("tilebook rename", () => {
  test("splits a range around the code, and changes no other letter of the load", async () => {
    const archive = await shelfArchive();
    const { code, out } = await tilebook("rename", "RN-3", "ZZ-1", "--yes", "--archive", archive);
    expect(code).toBe(0);
    expect(out).toMatch(/^Renamed\.\nSee that all is well: .*check --archive/u);
    expect(await read(archive, "tiles/firings/g-9.md")).toBe(
      load.replace("[RN-1..RN-5,", "[RN-1..RN-2, ZZ-1, RN-4..RN-5,"),
    );
    expect(await read(archive, "tiles/shelf/ZZ-1.md")).toContain("formerly: [RN-3]");
    const names = await readdir(join(archive, "tiles/shelf"));
    expect(names.filter((name) => /^(RN-3|ZZ-1)\./u.test(name)).sort()).toEqual([
      "ZZ-1.jpg",
      "ZZ-1.md",
    ]);
  });

  test("finds the tile as a set's control, and at the end of a range that has lines of its own", async () => {
    const archive = await shelfArchive();
    await tilebook("rename", "rn-6", "ZZ-2", "--yes", "--archive", archive);
    expect(await read(archive, "tiles/shelf/set.md")).toContain("control: ZZ-2   # the twin");
    expect(await read(archive, "tiles/firings/g-9.md")).toBe(
      load.replace("    - RN-6..RN-7", "    - ZZ-2\n    - RN-7"),
    );
    const { errors } = await errorsOf(archive);
    expect(errors.filter(({ file }) => file.includes("g-9") || file.includes("shelf/set"))).toEqual(
      [],
    );
  });

  test("names the notes that speak of the old code, and leaves them alone", async () => {
    const archive = await shelfArchive();
    const { err } = await tilebook("rename", "RN-3", "ZZ-1", "--yes", "--archive", archive);
    expect(err.split("\n")).toEqual([
      "  rename tiles/shelf/RN-3.md → tiles/shelf/ZZ-1.md",
      "  rename tiles/shelf/RN-3.jpg → tiles/shelf/ZZ-1.jpg",
      "  write into tiles/shelf/ZZ-1.md: formerly: RN-3",
      "  write into tiles/firings/g-9.md: tiles › top: RN-1..RN-2, ZZ-1, RN-4..RN-5, RN-9",
      "  left as it is: the notes in tiles/firings/g-9.md speak of the old code",
    ]);
  });

  test("and back gives the record that was, but for an older code", async () => {
    const archive = await shelfArchive();
    await tilebook("rename", "RN-8", "ZZ-3", "--yes", "--archive", archive);
    await tilebook("rename", "ZZ-3", "RN-8", "--yes", "--archive", archive);
    expect(await read(archive, "tiles/shelf/RN-8.md")).toContain("formerly: [ZZ-3]\n");
    expect(await read(archive, "tiles/firings/g-9.md")).toBe(load);
  });

  test.each([
    ["RN-3", "RN-4", "There is a tile RN-4 already. Nothing was changed."],
    ["RN-3", "rn-3", "The tile is called RN-3 already. Nothing was changed."],
    ["RN-30", "ZZ-1", "There is no tile RN-30. Did you mean RN-3? Nothing was changed."],
    [
      "RN-3",
      "a/../b",
      "“a/../b” cannot be a code: a name may hold letters, digits, “-”, “_” and “.”, and begins with a letter or digit. Nothing was changed.",
    ],
  ])("refuses %s as %s, and touches nothing", async (old, code, words) => {
    const archive = await shelfArchive();
    const before = await sumsOf(archive);
    const ended = await tilebook("rename", old, code, "--yes", "--archive", archive);
    expect(ended).toEqual({ code: 2, out: "", err: words });
    expect(await sumsOf(archive)).toEqual(before);
  });

  test("where nobody can be asked, shows what it would do and does nothing", async () => {
    const archive = await shelfArchive();
    const before = await sumsOf(archive);
    const { code, err } = await tilebook("rename", "RN-3", "ZZ-1", "--archive", archive);
    expect(code).toBe(0);
    expect(err.split("\n").at(-1)).toBe(
      "Nothing was changed: add --yes to do it where nobody can be asked.",
    );
    expect(await sumsOf(archive)).toEqual(before);
  });

  test("tells what it could not write and why, and writes all the rest", async () => {
    const archive = await shelfArchive();
    const said = tellsOf("log", "error");
    const ask = async () => {
      await appendFile(join(archive, "tiles/shelf/set.md"), "Somebody writes here.\n");
      await rm(join(archive, "tiles/firings/g-9.md"));
      return "y";
    };
    expect(await rename("RN-6", "ZZ-2", { archive, yes: false, ask })).toBe(1);
    expect(said().slice(-4, -1)).toEqual([
      "Not done: write into tiles/shelf/set.md: control: ZZ-2: tiles/shelf/set.md was changed meanwhile.",
      "Not done: write into tiles/firings/g-9.md: tiles › bottom: ZZ-2, RN-7: tiles/firings/g-9.md is not there any more.",
      "Renamed, but for the lines above: write those by hand.",
    ]);
    expect(await read(archive, "tiles/shelf/ZZ-2.md")).toContain("formerly: [RN-6]");
  });

  test("changes nothing where a name is taken meanwhile, and says which", async () => {
    const archive = await shelfArchive();
    const said = tellsOf("error");
    const ask = async () => {
      await writeFile(join(archive, "tiles/shelf/ZZ-1.jpg"), "another");
      return "y";
    };
    expect(await rename("RN-3", "ZZ-1", { archive, yes: false, ask })).toBe(1);
    expect(said().at(-1)).toBe(
      "Nothing was changed: there is a file tiles/shelf/ZZ-1.jpg already.",
    );
    expect(await read(archive, "tiles/shelf/RN-3.md")).toBe(tile);
  });

  test("waits where a record cannot be read, since it may name the tile", async () => {
    const archive = await archiveWith({
      "tiles/firings/g-8.md": "---\nkind: glaze\ntiles: [\n---\n",
    });
    const { code } = await tilebook("rename", "EV-1", "ZZ-1", "--yes", "--archive", archive);
    expect(code).toBe(1);
  });
});

import { mkdir, readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import type { Files } from "../support/archive-folder.ts";
import { archiveWith, errorsOf } from "./archives.ts";
import { sumsOf } from "./site-files.ts";
import { tilebook } from "./tilebook.ts";

const more: Files = {
  "tiles/firings/g-1.md": [
    "---",
    "on: 2026-10-20",
    "kind: glaze",
    "cone: 6",
    "tiles: {top: [EV-1..EV-3], bottom: HID-1} # as drawn",
    "---",
    "Bram's EV-1 stood at the back.",
  ].join("\n"),
  "tiles/evening/set.md":
    "---\nname: Evening class\nkind: class\ndefaults: {clay: buff}\njars: {7: soot}\ncodes: EV-1..EV-9\ncontrol: EV-1\n---\nTolliver brought cake.\n",
};

async function forgetIn(files: Files, ...args: readonly string[]) {
  const archive = await archiveWith(files);
  const ended = await tilebook("forget", "--archive", archive, ...args);
  const read = (file: string) => readFile(join(archive, file), "utf8");
  const err = ended.err.replaceAll(archive, "HERE");
  const out = ended.out
    .replaceAll(archive, "HERE")
    .replace(/npm run --silent tilebook --/gu, "TILEBOOK");
  return { archive, read, code: ended.code, err, out };
}

describe("a maker", () => {
  test("loses the name and keeps the key, and every line with the name is told", async () => {
    const { archive, read, code, err, out } = await forgetIn(more, "M02", "--yes");
    expect(err).toMatchInlineSnapshot(`
      "This will be done:
        in studio.yaml: take the name of m02 out, Bram Tolliver; the key stays, since records name it
        remove all pictures in the cache: the next build makes those that are left anew

      The name, or a part of it, is in words that somebody wrote. See to these lines yourself:
        tiles/evening/set.md, line 9: Tolliver brought cake.
        tiles/firings/g-1.md, line 7: Bram's EV-1 stood at the back.
      "
    `);
    expect(out).toMatchInlineSnapshot(`
      "Done in this archive.

      What a tool cannot reach, and what to do:
      - The site: run TILEBOOK build --archive HERE and publish it again. Until then it shows what it showed.
      - If the archive is kept in a repository somewhere, its history still has all of it: docs/privacy.md says how to rewrite it.
      - Forks and copies on other computers: ask everyone who has one to delete it and copy anew.
      - What was handed in: delete it from the downloads of the form, from mail and from shared folders.
      - Folders and zips that were shared: share them again, and ask whoever has the old ones to delete them.
      - Search engines and archives of the web: ask them to take the pages out, each by its own form.
      - Backups: see how long they are kept.
      - Printed pages and books: take them off the wall.
      Whatever was public may have been read and copied: nobody can call that back."
    `);
    expect(code).toBe(0);
    expect(await read("studio.yaml")).toContain("\n  m02: {shown: initials}\n");
    expect(await read("tiles/evening/EV-2.md")).toContain("maker: m02");
    expect((await errorsOf(archive)).errors).toEqual([]);
  });

  test("goes with the tiles, where that is asked for: records, photographs, places in load lists", async () => {
    const { archive, read, code, err } = await forgetIn(more, "m01", "--tiles", "--yes");
    expect(err).toMatchInlineSnapshot(`
      "This will be done:
        in studio.yaml: take m01 out of makers
        in tiles/firings/g-1.md: take EV-1 off its load
        remove tiles/evening/EV-1.md
        remove tiles/evening/EV-1.jpg
        remove all pictures in the cache: the next build makes those that are left anew

      These lines speak of EV-1, and what they say no longer leads to a tile. See to them yourself:
        tiles/evening/set.md, line 6: codes: EV-1..EV-9
        tiles/evening/set.md, line 7: control: EV-1
        tiles/firings/g-1.md, line 7: Bram's EV-1 stood at the back.

      The name is in no other record. A nickname or a misspelt name cannot be looked for.
      "
    `);
    expect(code).toBe(0);
    expect(await read("studio.yaml")).not.toContain("m01");
    expect(await read("tiles/firings/g-1.md")).toContain(
      "tiles: {top: [EV-2..EV-3], bottom: HID-1} # as drawn",
    );
    expect((await readdir(join(archive, "tiles/evening"))).sort()).toEqual([
      ...["EV-2.jpg", "EV-2.md", "EV-3.md", "set.md"],
    ]);
    expect((await errorsOf(archive)).errors).toEqual([]);
  });

  test("keeps the key where a set names it, though all tiles go", async () => {
    const led = {
      "tiles/evening/set.md": "---\nname: Evening\nteacher: m01\njars: {7: soot}\n---\n",
    };
    const { read, err } = await forgetIn(led, "m01", "--tiles", "--yes");
    expect(err).toContain("in studio.yaml: take the name of m01 out, Wren Ashdown; the key stays");
    expect(await read("studio.yaml")).toContain("\n  m01: {shown: yes}\n");
  });

  test("takes out the names under which a maker commits, with a name beside them and without", async () => {
    const studio = [
      "format: 1",
      "studio: Eelgate Pottery",
      "makers:",
      "  m01: {name: Wren Ashdown, shown: yes, commits-as: [wren, W. A.]}",
      "  m02: {shown: no, commits-as: bram}",
      "  m03: {}",
    ].join("\n");
    const named = await forgetIn({ "studio.yaml": studio }, "m01", "--yes");
    expect(await named.read("studio.yaml")).toContain("\n  m01: {shown: yes}\n");
    const nameless = await forgetIn({ "studio.yaml": studio }, "m02", "--yes");
    expect(nameless.err).toContain(
      "in studio.yaml: take what else m02 is called out; the key stays, since records name it",
    );
    expect(await nameless.read("studio.yaml")).toContain("\n  m02: {shown: no}\n");
  });

  test("without a name has nothing to be taken out, and that is told", async () => {
    const studio = "format: 1\nstudio: Eelgate Pottery\nmakers: {m01: {}, m02: {}, m03: {}}\n";
    const { err, read, code } = await forgetIn({ "studio.yaml": studio }, "m03", "--yes");
    expect(code).toBe(0);
    expect(err).toContain(
      "m03 has no name in studio.yaml. To take the tiles out too, add --tiles.",
    );
    expect(await read("studio.yaml")).toBe(studio);
  });
});

describe("a tile", () => {
  test("goes with its photographs, its place in the load list and the pictures in the cache", async () => {
    const archive = await archiveWith({
      ...more,
      "tiles/firings/g-1.md": "---\non: 2026-10-20\nkind: glaze\ntiles: {top: EV-2}\n---\n",
    });
    const made = join(archive, ".cache/pictures/made/ab/abcd");
    await mkdir(made, { recursive: true });
    const { code, out } = await tilebook("forget", "--archive", archive, "ev-2", "--yes");
    expect(code).toBe(0);
    expect(out).toContain(
      "- Printed labels and sheets, and the code on the clay: take them off the wall. EV-2 can be given again now: do not, or an old label leads to another tile.",
    );
    expect(await readFile(join(archive, "tiles/firings/g-1.md"), "utf8")).toBe(
      "---\non: 2026-10-20\nkind: glaze\n---\n",
    );
    expect(await readdir(join(archive, ".cache/pictures/made/ab"))).toEqual([]);
    expect((await readdir(join(archive, "tiles/evening"))).join()).not.toContain("EV-2");
    expect((await errorsOf(archive)).errors).toEqual([]);
  });

  test("that others speak of is told with file and line, and with --tiles nothing is done", async () => {
    const { err } = await forgetIn(more, "EV-1", "--yes");
    expect(err).toContain(
      "  tiles/evening/set.md, line 7: control: EV-1\n  tiles/firings/g-1.md, line 7: Bram's EV-1 stood at the back.\n",
    );
    const refused = await forgetIn(more, "EV-1", "--tiles", "--yes");
    expect(refused).toMatchObject({
      ...{ code: 2, err: "EV-1 is a tile: --tiles is for makers. Nothing was changed." },
    });
  });
});

describe("nothing is forgotten", () => {
  test("where nobody says so", async () => {
    const archive = await archiveWith(more);
    const before = await sumsOf(archive);
    const { code, err } = await tilebook("forget", "--archive", archive, "m01", "--tiles");
    expect(code).toBe(0);
    expect(err).toContain("Nothing was changed: add --yes to do it where nobody can be asked.");
    expect(await sumsOf(archive)).toEqual(before);
  });

  test("where no maker and no tile has that key", async () => {
    expect(await forgetIn(more, "EV-11", "--yes")).toMatchObject({
      ...{
        code: 2,
        err: "There is no maker and no tile “EV-11”. Did you mean EV-1? Nothing was changed.",
      },
    });
  });

  test("where a record cannot be read, since nobody knows whose it is", async () => {
    const { code, err } = await forgetIn(
      { "tiles/evening/EV-3.md": "---\nmakr: m03\n---\n" },
      "m03",
    );
    expect(code).toBe(1);
    expect(err).toContain("tiles/evening/EV-3.md");
  });
});

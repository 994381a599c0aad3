import fs from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { folderFiles } from "../../src/archive/folder-files.ts";
import { MachineError } from "../../src/disk/machine-error.ts";
import {
  least,
  read,
  readWith,
  record,
  sound,
  tell,
  tellOf,
  temporaryFolder,
  writeFiles,
} from "./archives.ts";

const fields = "layers:\n  - glaze: soot";

describe("where there is no archive", () => {
  it("a folder that does not exist is named", async () => {
    const found = await read(path.join(temporaryFolder(), "nowhere"));
    expect(found.archive).toBeNull();
    expect(tell(found)).toMatchInlineSnapshot(`
      "
      studio.yaml:1:1 error: There is no folder of that name, so there is no archive to read [no-archive]
        Name the folder that holds studio.yaml.
      "
    `);
  });

  it("an empty folder has no studio.yaml", async () => {
    const found = await read(temporaryFolder());
    expect(found.archive).toBeNull();
    expect(tell(found)).toMatchInlineSnapshot(`
      "
      studio.yaml:1:1 error: There is no studio.yaml, which says whose archive this is [no-studio]
        Write studio.yaml with two lines: “format: 1” and “studio:” with the studio's name.
      "
    `);
  });

  it("a studio.yml is nearly right", async () => {
    const dir = temporaryFolder();
    writeFiles(dir, { "studio.yml": "format: 1\n" });
    expect(tell(await read(dir))).toMatchInlineSnapshot(`
      "
      studio.yaml:1:1 error: There is no studio.yaml, which says whose archive this is [no-studio]
        Rename “studio.yml” to “studio.yaml”.
      "
    `);
  });

  it("a studio alone is an empty archive", async () => {
    const dir = temporaryFolder();
    writeFiles(dir, { "studio.yaml": least["studio.yaml"] ?? "" });
    expect(tell(await read(dir))).toMatchInlineSnapshot(`
      "
      studio.yaml:1:1 error: The archive is empty: there is no tile, no glaze, no clay and no firing [empty-archive]
        1 | format: 1
          | ^
        Write the first tile as a Markdown file in tiles/, such as tiles/TB-001.md.
      "
    `);
  });

  it("a studio with glazes and no tile yet may go on", async () => {
    const dir = temporaryFolder();
    writeFiles(dir, {
      "studio.yaml": least["studio.yaml"] ?? "",
      "recipes/glazes/soot.md": least["recipes/glazes/soot.md"] ?? "",
    });
    const found = await read(dir);
    expect(found.archive?.glazes.size).toBe(1);
    expect(tell(found)).toMatchInlineSnapshot(`
      "
      studio.yaml:1:1 warning: There is no tile in the archive yet [no-tiles]
        1 | format: 1
          | ^
        Write the first tile as a Markdown file in tiles/, such as tiles/TB-001.md.
      "
    `);
  });

  it("a faulty studio.yaml leaves no archive, and the rest is checked all the same", async () => {
    const found = await readWith({
      "studio.yaml": "format: 2\n",
      "tiles/WL-002.md": record("maker: m07\nlayers: [{glaze: sot}]"),
    });
    expect(found.archive).toBeNull();
    expect(tell(found)).toMatchInlineSnapshot(`
      "
      studio.yaml:1:1 error: “studio” is missing [missing-field]
        1 | format: 2
          | ^
        Add a line “studio:” with its value.

      studio.yaml:1:9 error: This archive is written in format 2, and this Tilebook reads format 1 [unknown-format]
        1 | format: 2
          |         ^
        Use the Tilebook that the archive was written for, or upgrade the archive as its documentation describes.

      tiles/WL-002.md:3:18 error: There is no glaze “sot” [unknown-glaze]
        3 | layers: [{glaze: sot}]
          |                  ^
        Did you mean “soot”?
      "
    `);
  });
});

describe("files and folders", () => {
  it("folders without a set, too deep, or of a name that is taken are reported", async () => {
    expect(
      await tellOf({
        "tiles/loose/WL-002.md": record(fields),
        "tiles/evening/set.md": record("name: Evening"),
        "tiles/evening/october/WL-003.md": record(fields),
        "tiles/set.md": record("name: Everything"),
        "tiles/firings/set.md": record("name: Firings"),
        "tiles/firings/2026/a.md": record("kind: glaze"),
        "recipes/glazes/blue/sky.md": record("name: Sky"),
      }),
    ).toMatchInlineSnapshot(`
      "
      recipes/glazes/blue:1:1 error: The folder recipes/glazes/blue/ is too deep: what is in it was not read [folder-too-deep]
        Put its records into recipes/glazes/ itself.

      tiles/evening/october:1:1 error: The folder tiles/evening/october/ is too deep: what is in it was not read [folder-too-deep]
        Tiles belong in tiles/ or one folder deeper: put them into tiles/evening/, or make “october” a set of its own in tiles/.

      tiles/firings/2026:1:1 error: The folder tiles/firings/2026/ is too deep: what is in it was not read [folder-too-deep]
        Put firings and their logs into tiles/firings/ itself.

      tiles/firings/set.md:1:1 error: A set cannot be named “firings”: that folder holds the kiln loads [reserved-set]
        Give the set's folder another name.

      tiles/loose:1:1 error: The folder tiles/loose/ has no set.md, so nothing says what its tiles have in common [folder-without-set]
        Write tiles/loose/set.md with a line “name:” between two lines of “---”, or move the tiles to tiles/.

      tiles/set.md:1:1 error: There is a set.md in tiles/ itself, where it belongs to no set [set-outside-folder]
        Make a folder for the set and put set.md into it, with the set's tiles.
      "
    `);
  });

  it("unexpected files are warned of; READMEs, licences and hidden files are not", async () => {
    expect(
      await tellOf({
        "tiles/README.md": "Hello",
        "tiles/LICENSE": "CC",
        "tiles/.DS_Store": "",
        "tiles/WL-001.txt": "",
        "tiles/firings/notes.txt": "",
        "tiles/firings/g.csv": "",
        "recipes/sky.md": "",
        "recipes/kilns/big.md": "",
        "recipes/glazes/label.jpg": "",
        "package.json": "{}",
        "elsewhere/tiles/x.md": "",
      }),
    ).toMatchInlineSnapshot(`
      "
      recipes/glazes/label.jpg:1:1 warning: Tilebook does not know what to do with “recipes/glazes/label.jpg” [unexpected-file]
        Records (.md) belong in recipes/glazes/. Rename it, or take it out of the archive.

      recipes/kilns:1:1 warning: Tilebook does not know what to do with “recipes/kilns” [unexpected-file]
        The folders glazes, clays and materials belong in recipes/. Rename it, or take it out of the archive.

      recipes/sky.md:1:1 error: “recipes/sky.md” is in recipes/ itself, where nothing says what it is a record of [recipe-outside-folder]
        Move it into recipes/glazes/, recipes/clays/ or recipes/materials/.

      tiles/firings/g.csv:1:1 warning: No firing names the log “g.csv” [unused-log]
        Write “log: g.csv” into the record of its firing.

      tiles/firings/notes.txt:1:1 warning: Tilebook does not know what to do with “tiles/firings/notes.txt” [unexpected-file]
        Records (.md) and their logs (.csv) belong in the firings' folder. Rename it, or take it out of the archive.

      tiles/WL-001.txt:1:1 error: “tiles/WL-001.txt” is not read, and there is a “WL-001.md” beside it [record-not-read]
        Compare the two, keep what is right in the one that ends in “.md”, and take the other out.
      "
    `);
  });

  it("pictures that belong to no tile, or show one result twice, are reported", async () => {
    const found = await readWith({
      "tiles/evening/set.md": record("name: Evening"),
      "tiles/evening/WL-002.md": record(fields),
      "tiles/wl-001.JPG": "",
      "tiles/WL-001.webp": "",
      "tiles/WL-001.before.jpg": "",
      "tiles/WL-001.detail-foot.png": "",
      "tiles/WL-001.detail.png": "",
      "tiles/WL-001.back.heic": "",
      "tiles/WL-002.jpg": "",
      "tiles/WL-003.jpg": "",
      "tiles/WL-001.front.jpg": "",
    });
    expect(tell(found)).toMatchInlineSnapshot(`
      "
      tiles/WL-001.front.jpg:1:1 error: “tiles/WL-001.front.jpg” belongs to no tile of its folder [picture-of-no-tile]
        Name it after its tile, such as TB-014.jpg, or TB-014.before.jpg, .detail.jpg, .back.jpg; or write “photo: {file: WL-001.front.jpg}” into the tile's record.

      tiles/WL-001.webp:1:1 error: “tiles/wl-001.JPG” and “tiles/WL-001.webp” both show the result of tiles/WL-001.md [two-results-shown]
        Keep one, and name the other as a detail, such as TB-014.detail.jpg.

      tiles/WL-002.jpg:1:1 error: “tiles/WL-002.jpg” belongs to no tile of its folder [picture-of-no-tile]
        The tile is in tiles/evening/: put the picture there.

      tiles/WL-003.jpg:1:1 error: “tiles/WL-003.jpg” belongs to no tile of its folder [picture-of-no-tile]
        Name it after its tile, such as TB-014.jpg, or TB-014.before.jpg, .detail.jpg, .back.jpg; or write “photo: {file: WL-003.jpg}” into the tile's record.
      "
    `);
    expect(found.archive?.tiles.get("wl-001")?.pictures).toEqual([
      { role: "result", file: "tiles/wl-001.JPG" },
      { role: "result", file: "tiles/WL-001.webp" },
      { role: "before", file: "tiles/WL-001.before.jpg" },
      { role: "detail", file: "tiles/WL-001.detail-foot.png" },
      { role: "detail", file: "tiles/WL-001.detail.png" },
      { role: "back", file: "tiles/WL-001.back.heic" },
    ]);
  });

  it("a picture is the result of a tile whose code ends like a role", async () => {
    const { tiles } = sound(
      await readWith({ "tiles/WL-1.back.md": record(fields), "tiles/WL-1.back.jpg": "" }),
    );
    expect(tiles.get("wl-1.back")?.pictures).toEqual([
      { role: "result", file: "tiles/WL-1.back.jpg" },
    ]);
  });
});

describe("symbolic links", () => {
  it("are never followed out of the archive's records, a checkout's own secrets included", async () => {
    const dir = temporaryFolder();
    const outside = temporaryFolder();
    writeFiles(outside, { "secret.md": record("name: Never read") });
    writeFiles(dir, { ...least, ".git/config": "password" });
    fs.symlinkSync(path.join(outside, "secret.md"), path.join(dir, "recipes/glazes/secret.md"));
    fs.symlinkSync("../.git/config", path.join(dir, "tiles/WL-002.md"));
    fs.symlinkSync(outside, path.join(dir, "tiles/outside"));
    fs.symlinkSync("nowhere.md", path.join(dir, "tiles/WL-003.md"));
    fs.symlinkSync("..", path.join(dir, "tiles/circle"));
    fs.symlinkSync(".", path.join(dir, "tiles/itself"));
    fs.symlinkSync("WL-004.md", path.join(dir, "tiles/WL-004.md"));
    const found = await read(dir);
    expect(tell(found)).toMatchInlineSnapshot(`
      "
      recipes/glazes/secret.md:1:1 error: “recipes/glazes/secret.md” is a link that leads out of the archive, so it was not followed [link-outside]
        Put the file itself in its place.

      tiles/circle:1:1 error: “tiles/circle” is a link that leads out of the archive, so it was not followed [link-outside]
        Put the file itself in its place.

      tiles/itself:1:1 error: “tiles/itself” is a link to a folder, and links to folders are not followed [link-to-folder]
        Put the folder itself in its place.

      tiles/outside:1:1 error: “tiles/outside” is a link that leads out of the archive, so it was not followed [link-outside]
        Put the file itself in its place.

      tiles/WL-002.md:1:1 error: “tiles/WL-002.md” is a link that leads out of the archive, so it was not followed [link-outside]
        Put the file itself in its place.

      tiles/WL-003.md:1:1 error: “tiles/WL-003.md” is a link to something that is not there [broken-link]
        Put the file itself in its place, or take the link away.

      tiles/WL-004.md:1:1 error: “tiles/WL-004.md” is a link to something that is not there [broken-link]
        Put the file itself in its place, or take the link away.
      "
    `);
    expect([...(found.archive?.glazes.keys() ?? [])]).toEqual(["soot"]);
    expect([...(found.archive?.tiles.keys() ?? [])]).toEqual(["wl-001"]);
  });

  it("studio.yaml and the folder of the tiles may not be links outside either", async () => {
    const dir = temporaryFolder();
    const outside = temporaryFolder();
    writeFiles(outside, least);
    fs.symlinkSync(path.join(outside, "studio.yaml"), path.join(dir, "studio.yaml"));
    fs.symlinkSync(path.join(outside, "tiles"), path.join(dir, "tiles"));
    expect(tell(await read(dir))).toMatchInlineSnapshot(`
      "
      studio.yaml:1:1 error: “studio.yaml” is a link that leads out of the archive, so it was not followed [link-outside]
        Put the file itself in its place.

      tiles:1:1 error: “tiles” is a link that leads out of the archive, so it was not followed [link-outside]
        Put the file itself in its place.
      "
    `);
  });

  it("to a file of the same archive are read as that file, and the archive itself may be a link", async () => {
    const dir = temporaryFolder();
    const link = path.join(temporaryFolder(), "archive");
    writeFiles(dir, least);
    fs.symlinkSync("soot.md", path.join(dir, "recipes/glazes/lampblack.md"));
    fs.symlinkSync(dir, link);
    expect([...sound(await read(link)).glazes.keys()]).toEqual(["lampblack", "soot"]);
  });
});

describe("the bytes of a file", () => {
  it("that are not UTF-8 are pointed at", async () => {
    const latin = Buffer.from(record(`${fields}\nresult:\n  next-time: à la crème`), "latin1");
    expect(await tellOf({ "tiles/WL-002.md": latin })).toMatchInlineSnapshot(`
      "
      tiles/WL-002.md:5:14 error: The file is not written in UTF-8: a letter in this line cannot be read [not-utf-8]
        5 |   next-time: � la cr�me
          |              ^
        Save it again as UTF-8: most editors ask for the encoding when you choose “Save as”.
      "
    `);
  });

  it("in UTF-16 are told apart", async () => {
    const utf16 = Buffer.from(`\uFEFF${record(fields)}`, "utf16le");
    expect(await tellOf({ "tiles/WL-002.md": utf16 })).toMatchInlineSnapshot(`
      "
      tiles/WL-002.md:1:1 error: The file is written in UTF-16, and Tilebook reads UTF-8 [not-utf-8]
        Save it again as UTF-8: most editors ask for the encoding when you choose “Save as”.
      "
    `);
  });

  it("may begin with a byte-order mark and end their lines as Windows does, without moving a fault", async () => {
    const windows = `\uFEFF${record(`${fields}\nmaker: m07`, "Two\nlines.").replaceAll("\n", "\r\n")}`;
    const found = await readWith({ "tiles/WL-002.md": windows });
    expect(tell(found)).toMatchInlineSnapshot(`
      "
      tiles/WL-002.md:4:8 error: There is no maker “m07” [unknown-maker]
        4 | maker: m07
          |        ^
        Add the code under “makers:” in studio.yaml, as in “m07: {}”.
      "
    `);
    expect(found.archive?.tiles.get("wl-002")?.notes).toBe("Two\nlines.");
  });

  it("that nobody can see are refused in fields and notes, and shown as what they are", async () => {
    expect(
      await tellOf({
        "tiles/WL-002.md": record(fields, "Ring \u0007 the bell"),
        "tiles/WL-003.md": record(`${fields}\nmaker: m\u001b[2J01`),
      }),
    ).toMatchInlineSnapshot(`
      "
      tiles/WL-002.md:5:6 error: There is a character here that nobody can see (U+0007) [control-character]
        5 | Ring ␇ the bell
          |      ^
        Delete what is around it and type it again.

      tiles/WL-003.md:4:9 error: There is a character here that nobody can see (U+001B) [control-character]
        4 | maker: m␛[2J01
          |         ^
        Delete what is around it and type it again.
      "
    `);
  });

  it("are not read where there are far too many", async () => {
    const dir = temporaryFolder();
    writeFiles(dir, { ...least, "tiles/WL-002.md": record(fields, "long ".repeat(4_000_000)) });
    const before = process.memoryUsage().arrayBuffers;
    expect(tell(await read(dir))).toMatchInlineSnapshot(`
      "
      tiles/WL-002.md:1:1 error: The file is 20.1 MB long, and no more than 1 MB is read [file-too-large]
        Check that it is the right file; keep pictures and other large things out of it.
      "
    `);
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(5_000_000);
  });

  it("that the machine will not give are no fault of the archive", () => {
    const dir = temporaryFolder();
    fs.mkdirSync(path.join(dir, "tiles"));
    const reading = () => folderFiles(dir).read("tiles", 1_000_000);
    expect(reading).toThrow(MachineError);
    expect(reading).toThrow(expect.objectContaining({ code: "EISDIR", path: `${dir}/tiles` }));
  });
});

describe("what other programs leave lying about", () => {
  it.each([
    "~$CL-02.md",
    ".~lock.CL-02.md#",
    "Thumbs.db",
    "desktop.ini",
    ".DS_Store",
    "._CL-02.jpg",
    ".CL-02.md.swp",
    "CL-02.md~",
  ])("is passed over: %s", async (name) => {
    sound(await readWith({ [`tiles/${name}`]: "", [`recipes/glazes/${name}`]: "" }));
  });
});

describe("a photograph that the camera named", () => {
  it("is the tile's result where the record says so, capitals aside", async () => {
    const { tiles } = sound(
      await readWith({
        "tiles/WL-002.md": record(`${fields}\nphoto: {file: img_2045.heic}`),
        "tiles/IMG_2045.HEIC": "",
        "tiles/WL-002.back.jpg": "",
      }),
    );
    expect(tiles.get("wl-002")?.pictures).toEqual([
      { role: "result", file: "tiles/IMG_2045.HEIC" },
      { role: "back", file: "tiles/WL-002.back.jpg" },
    ]);
  });

  it("may be named by a record that cannot be read, so nothing is told of it but that", async () => {
    const found = await readWith({
      "tiles/WL-002.md": "---\nlayers: [\n---\n",
      "tiles/IMG_2045.HEIC": "",
      "tiles/evening/set.md": record("name: Evening"),
      "tiles/evening/EV-1.md.txt": record(fields),
      "tiles/evening/EV-1.jpg": "",
    });
    expect(found.problems.map(({ file }) => file)).toEqual([
      "tiles/evening/EV-1.md.txt",
      "tiles/WL-002.md",
    ]);
  });
});

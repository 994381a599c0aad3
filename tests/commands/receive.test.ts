import { mkdir, mkdtemp, readdir, readFile, symlink, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import sharp from "sharp";
import { describe, expect, onTestFinished, test, vi } from "vitest";
import { receive } from "../../src/commands/receive/receive.ts";
import { type Files, photograph, writeInto } from "../support/archive-folder.ts";
import { removeFolder } from "../support/remove-folder.ts";
import { zipOf, zipOfTexts } from "../support/zip.ts";
import { archiveWith, errorsOf } from "./archives.ts";
import { sumsOf } from "./site-files.ts";
import { tilebook } from "./tilebook.ts";

const autumn: Files = {
  "tiles/autumn/set.md":
    "---\nname: Autumn class\ncodes: TB-101..TB-109\njars: {7: soot}\ndefaults: {clay: buff}\n---\n",
};

const record = (maker = "m01", more = "") =>
  `---\nglazed: 2026-11-02\nmaker: ${maker}\nlayers:\n  - {glaze: 7, coats: 2, by: brush}\n${more}---\n`;

/** A folder with what was handed in. */
async function handedIn(files: Files): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), "tilebook-handed-in-"));
  onTestFinished(() => removeFolder(folder));
  await writeInto(folder, files);
  return folder;
}

/** Receives files into a new archive with a set that keeps codes. */
async function receiveInto(files: Files, ...args: readonly string[]) {
  const archive = await archiveWith(autumn);
  const folder = await handedIn(files);
  const run = (...more: readonly string[]) =>
    tilebook("receive", "--archive", archive, ...args, ...more);
  const ended = await run("--yes", ...Object.keys(files).map((file) => join(folder, file)));
  const read = (path: string) => readFile(join(archive, path), "utf8");
  return { archive, folder, run, read, ...ended };
}

/** What was said, without how to run the check, and the temporary folder. */
function saidBy({ err, out }: { readonly err: string; readonly out: string }): string {
  return `${err}\n${out}`.replace(/^look at the photographs\n/u, "").replace(/\nSee that.*/u, "");
}

const grey = await photograph("#556677", 60, 40);
const placed = await sharp(grey)
  .withExif({ IFD3: { GPSLatitude: "50/1 0/1 0/1", GPSLatitudeRef: "N" } })
  .jpeg()
  .toBuffer();

describe("new tiles", () => {
  test("get a code of their set's block, keep every letter, and lose the place of their photographs", async () => {
    const { code, archive, read, ...said } = await receiveInto({
      "anna.zip": zipOfTexts({
        "tiles/autumn/TB-101.md": record("m01", "# a remark\n"),
        "tiles/autumn/TB-101.before.jpg": placed,
      }),
      "ben.zip": zipOfTexts({
        "tiles/autumn/no-code-ab12cd34.md": record("m02"),
        "tiles/autumn/no-code-ab12cd34.jpg": grey,
      }),
      "cara.zip": zipOfTexts({ "tiles/autumn/TB-101.md": record("m03") }),
    });
    expect(saidBy(said)).toMatchInlineSnapshot(`
      "3 new tiles:
        TB-101, into autumn, from anna.zip: tiles/autumn/TB-101.md
          Soot: 2 coats, brushed
          photograph before firing TB-101.before.jpg, without the notes and place in it
        TB-102, into autumn, from ben.zip: tiles/autumn/no-code-ab12cd34.md
          It came without a code.
          Soot: 2 coats, brushed
          photograph TB-102.jpg
        TB-103, into autumn, from cara.zip: tiles/autumn/TB-101.md
          It came as TB-101, and so did anna.zip: tiles/autumn/TB-101.md, which keeps it.
          Soot: 2 coats, brushed

      3 of 3 new tiles taken in.

      All that was handed in is here."
    `);
    expect(code).toBe(0);
    expect(await read("tiles/autumn/TB-101.md")).toBe(record("m01", "# a remark\n"));
    expect(await read("tiles/autumn/TB-102.md")).toBe(
      record("m02").replace("---\n", "---\n# handed in as no-code-ab12cd34\n"),
    );
    expect((await readdir(join(archive, "tiles/autumn"))).sort()).toEqual([
      ...["TB-101.before.jpg", "TB-101.md", "TB-102.jpg", "TB-102.md", "TB-103.md", "set.md"],
    ]);
    expect(await errorsOf(archive)).toEqual({ code: 0, errors: [] });
  });

  test("come from folders, from files one by one, and from a spreadsheet with photographs beside it", async () => {
    const archive = await archiveWith(autumn);
    const folder = await handedIn({
      "class/autumn/TB-104.md": record(),
      "class/photos/TB-104.jpg": grey,
      "TB-105 (1).md": record(),
      "sheet/class.csv":
        "Tile;Set;Glaze 1;Coats 1;Cone;Photo\n06;autumn;7;2;06;IMG_1.jpg\n;autumn;liner;;;\n",
      "sheet/IMG_1.jpg": placed,
      "sheet/IMG_2.jpg": grey,
    });
    const files = ["class", "TB-105 (1).md", "sheet/class.csv"].map((file) => join(folder, file));
    const ended = await tilebook(
      "receive",
      "--archive",
      archive,
      "--yes",
      "--set",
      "autumn",
      ...files,
    );
    expect(saidBy(ended).replaceAll(folder, "HERE")).toMatchInlineSnapshot(`
      "The columns of class.csv:
        “Tile” is code
        “Set” is set
        “Glaze 1” is layer 1
        “Coats 1” is coats 1
        “Cone” is left out: Tilebook knows no such column
        “Photo” is photo

      4 new tiles:
        TB-104, into autumn, from class/autumn/TB-104.md
          Soot: 2 coats, brushed
          photograph TB-104.jpg
        06, into autumn, from class.csv, row 2
          Soot: 2 coats
          photograph 06.jpg, without the notes and place in it
        TB-101, into autumn, from class.csv, row 3
          It came without a code.
          Liner
        TB-105, into autumn, from HERE/TB-105 (1).md
          Soot: 2 coats, brushed

      4 of 4 new tiles taken in.

      All that was handed in is here."
    `);
    expect(ended.code).toBe(0);
    expect(await readFile(join(archive, "tiles/autumn/06.md"), "utf8")).toBe(
      "---\nlayers:\n  - {glaze: 7, coats: 2}\n---\n",
    );
    expect((await readdir(join(archive, "tiles/autumn"))).sort()).toEqual([
      ...["06.jpg", "06.md", "TB-101.md", "TB-104.jpg", "TB-104.md", "TB-105.md", "set.md"],
    ]);
    expect(await errorsOf(archive)).toEqual({ code: 0, errors: [] });
  });

  test("are asked for once, together, and are not written where somebody says no", async () => {
    const archive = await archiveWith(autumn);
    const before = await sumsOf(archive);
    const folder = await handedIn({ "TB-101.md": record(), "TB-102.md": record("m02") });
    const asked: string[] = [];
    const said = vi.spyOn(console, "error").mockImplementation(() => undefined);
    const out = vi.spyOn(console, "log").mockImplementation(() => undefined);
    const ask = async (question: string) => {
      asked.push(question);
      return "n";
    };
    expect(await receive([folder], { archive, set: "autumn", yes: false, ask })).toBe(0);
    expect(asked).toEqual(["Take in these 2 new tiles? (y/n)"]);
    expect(said.mock.calls.at(-1)).toEqual(["The new tiles were not taken."]);
    expect(out.mock.calls.join()).not.toContain("All that was handed in is here.");
    vi.restoreAllMocks();
    expect(await sumsOf(archive)).toEqual(before);
  });

  test("are not written where nobody can be asked, and that is told", async () => {
    const archive = await archiveWith(autumn);
    const before = await sumsOf(archive);
    const folder = await handedIn({ "TB-101.md": record() });
    const { code, err } = await tilebook("receive", "--archive", archive, folder);
    expect(code).toBe(1);
    expect(err).toContain(
      "The new tile was not taken.\nAdd --yes to take in what is new where nobody can be asked.",
    );
    expect(await sumsOf(archive)).toEqual(before);
  });
});

describe("a tile of the archive", () => {
  const result =
    "---\nmaker: m03\nlayers: [{glaze: soot}]\nresult: {surface: satin, next-time: 'thin: yes'}\n---\nIt *ran*.\n";

  test("gains a result, a photograph and notes, and every other letter of it stays", async () => {
    const { code, read, ...said } = await receiveInto({
      "dora.zip": zipOfTexts({ "tiles/evening/EV-3.md": result, "tiles/evening/EV-3.jpg": placed }),
    });
    expect(saidBy(said)).toMatchInlineSnapshot(`
      "EV-3 is in the archive. From dora.zip: tiles/evening/EV-3.md:
        + result › surface: satin
        + result › next-time: thin: yes
        + notes: It *ran*.
        + photograph EV-3.jpg, without the notes and place in it
      All that was handed in is here."
    `);
    expect(code).toBe(0);
    expect(await read("tiles/evening/EV-3.md")).toBe(
      '---\nmaker: m03\nlayers: [{glaze: soot}]\nresult: {surface: satin, next-time: "thin: yes"}\n---\nIt *ran*.\n',
    );
  });

  test("gains a photograph that was handed in alone, and keeps the one that it has", async () => {
    const { code, archive, ...said } = await receiveInto({
      "EV-2.detail.jpg": placed,
      "EV-1.jpg": grey,
      "stray.jpg": grey,
    });
    expect(saidBy(said).replace(/\S*tilebook-handed-in-[^/]*/gu, "HERE")).toMatchInlineSnapshot(`
      "Not taken:
        HERE/stray.jpg
          No tile of this code was handed in, and there is none in the archive. Name it after its tile, such as TB-014.jpg or TB-014.before.jpg.

      EV-1 is in the archive. From HERE/EV-1.jpg:
        nothing is new
        not taken: EV-1 has another photograph already, tiles/evening/EV-1.jpg, and keeps it. Hand EV-1.jpg in as EV-1.detail.jpg, or take that one out of the archive first.
      EV-2 is in the archive. From HERE/EV-2.detail.jpg:
        + photograph of a detail EV-2.detail.jpg, without the notes and place in it
      What is told above as not taken is still to do."
    `);
    expect(code).toBe(1);
    expect(await readdir(join(archive, "tiles/evening"))).toContain("EV-2.detail.jpg");
  });

  test("is never changed but where somebody says so at a terminal, whatever --yes says", async () => {
    const other = "---\nmaker: m01\nlayers: [{glaze: soot}]\nfate: stuck\n---\n";
    const { code, archive, folder, read, ...said } = await receiveInto({ "EV-3.md": other });
    expect(saidBy(said).replace(/\S*tilebook-handed-in-[^/]*/gu, "HERE")).toMatchInlineSnapshot(`
      "EV-3 is in the archive. From HERE/EV-3.md:
        + fate: stuck
      What was handed in and the archive do not agree about EV-3:
        maker: the archive says m03, what was handed in says m01
      Nothing was changed in EV-3. Receive it without --yes to be asked.
      What is told above as not taken is still to do."
    `);
    expect(code).toBe(1);
    expect(await read("tiles/evening/EV-3.md")).toBe(
      "---\nmaker: m03\nlayers: [{glaze: soot}]\nfate: stuck\n---\n",
    );
    const spies = [vi.spyOn(console, "error"), vi.spyOn(console, "log")];
    for (const spy of spies) spy.mockImplementation(() => undefined);
    const asked: string[] = [];
    const ask = async (question: string) => {
      asked.push(question);
      return "y";
    };
    expect(await receive([folder], { archive, yes: false, ask })).toBe(0);
    vi.restoreAllMocks();
    expect(asked).toEqual(["Change it in EV-3? (y/n)"]);
    expect(await read("tiles/evening/EV-3.md")).toBe(
      "---\nmaker: m01\nlayers: [{glaze: soot}]\nfate: stuck\n---\n",
    );
  });

  test("with other layers is not touched, and by somebody else it is another tile", async () => {
    const files = (maker: string) => ({
      "EV-3.md": `---\nmaker: ${maker}\nlayers: [{glaze: liner}]\n---\n`,
    });
    const same = await receiveInto(files("m03"), "--set", "autumn");
    expect(same.err).toContain(
      "EV-3 is in the archive with other layers. If this is another tile, give it a code of its own; if the archive is wrong, write the layers into tiles/evening/EV-3.md by hand.",
    );
    const other = await receiveInto(files("m01"), "--set", "autumn");
    expect(other.err).toContain("It came as EV-3: it is on tiles/evening/EV-3.md.");
    expect(await other.read("tiles/autumn/TB-101.md")).toContain("# handed in as EV-3 (");
  });
});

describe("what cannot be taken", () => {
  test("is told, each with its reason, and all the rest is taken", async () => {
    const { code, archive, ...said } = await receiveInto({
      "good.zip": zipOfTexts({ "tiles/autumn/TB-101.md": record() }),
      "outside.zip": zipOfTexts({ "../TB-102.md": record() }),
      "maker.zip": zipOfTexts({ "tiles/autumn/TB-103.md": record("m99") }),
      "field.zip": zipOfTexts({ "tiles/autumn/TB-104.md": record("m01", "glaze: soot\n") }),
      "text.zip": zipOfTexts({ "tiles/autumn/TB-105.md": "hello" }),
      "picture.zip": zipOfTexts({
        "tiles/autumn/TB-106.md": record(),
        "tiles/autumn/TB-106.jpg": "<svg onload=alert(1)>",
      }),
      "many.zip": zipOfTexts({
        "inner.zip": "PK",
        "list.docx": "x",
        "recipes/glazes/soot.md": "---\n---\n",
        "tiles/autumn/set.md": "---\nname: Mine\n---\n",
        "__MACOSX/._TB-1.md": "x",
      }),
      "empty.zip": zipOf([]),
      "turned.zip": zipOfTexts({ "tiles/autumn/TB\u202e-7.md": record() }),
      "huge.zip": zipOfTexts({
        "tiles/autumn/TB-108.md": record("m01", `# ${"x".repeat(1_000_001)}\n`),
      }),
    });
    expect(saidBy(said)).toMatchInlineSnapshot(`
      "1 new tile:
        TB-101, into autumn, from good.zip: tiles/autumn/TB-101.md
          Soot: 2 coats, brushed

      Not taken:
        outside.zip
          A file in it is named “../TB-102.md”, which leads out of the folder it would be unpacked into. Nothing of it was taken. Ask whoever sent it for the tiles' own files, and do not open it by hand.
        many.zip: inner.zip
          It is a zip inside a zip, and is not opened. Unpack the outer one, and receive what comes out.
        many.zip: list.docx
          It is neither a record (.md), nor a photograph, nor a spreadsheet's CSV.
        huge.zip
          “tiles/autumn/TB-108.md” in it unpacks to more than 200 times its size, as no photograph does. Nothing of it was taken. Ask whoever sent it for the tiles' own files, and do not open it by hand.
        many.zip: recipes/glazes/soot.md
          It is no tile's record by the folder it is in, and only tiles are received. Put it into the archive yourself, if you want it.
        many.zip: tiles/autumn/set.md
          It is a set's record, and only tiles are received. Put it into the archive yourself, if you want it.
        empty.zip
          There is no tile in it.
        picture.zip: tiles/autumn/TB-106.md
          Its photograph TB-106.jpg: This is an SVG drawing, whatever its name says, and not a photograph that can be shown. Save it as JPEG (or PNG, WebP, AVIF, TIFF, HEIC) and put that in its place.
        turned.zip: tiles/autumn/TB�-7.md
          “TB�-7” cannot be a tile's code: a name may hold letters, digits, “-”, “_” and “.”, and begins with a letter or digit. Give it another one.
        maker.zip: tiles/autumn/TB-103.md, line 3
          There is no maker “m99”. Add the code under “makers:” in studio.yaml, as in “m07: {}”.
        field.zip: tiles/autumn/TB-104.md, line 6
          There is no field “glaze” here. Did you mean “glazed”?
        text.zip: tiles/autumn/TB-105.md, line 1
          The file does not begin with a line “---”, so none of its fields can be found. Put a line “---” at the very top, the fields beneath it, and another “---” after them.

      1 of 1 new tiles taken in.

      What is told above as not taken is still to do."
    `);
    expect(code).toBe(1);
    expect((await readdir(join(archive, "tiles/autumn"))).sort()).toEqual(["TB-101.md", "set.md"]);
  });

  test("is never looked for behind a link", async () => {
    const folder = await handedIn({ "secret.md": record(), "in/TB-101.md": record() });
    await symlink(join(folder, "secret.md"), join(folder, "in/TB-102.md"));
    const archive = await archiveWith(autumn);
    const { err } = await tilebook("receive", "--archive", archive, "--yes", join(folder, "in"));
    expect(err).toContain(
      "TB-102.md\n    It is a link, and links are not followed. Put the file itself in its place.",
    );
    expect((await readdir(join(archive, "tiles/autumn"))).sort()).toEqual(["TB-101.md", "set.md"]);
  });

  test.each([
    [["gone.zip"], "There is no file or folder gone.zip. Nothing was changed."],
    [
      ["--set", "autum", "."],
      "There is no set “autum” in this archive. Did you mean “autumn”? Nothing was changed.",
    ],
  ])("ends the command where it is no file or no set: %j", async (args, said) => {
    const archive = await archiveWith(autumn);
    expect(await tilebook("receive", "--archive", archive, ...args)).toMatchObject({
      ...{ code: 2, err: said },
    });
  });

  test("is told of an archive whose sets cannot be read, before anything is opened", async () => {
    const archive = await archiveWith({ "tiles/autumn/set.md": "---\nnom: x\n---\n" });
    const { code, err } = await tilebook("receive", "--archive", archive, ".");
    expect({ code, err }).toMatchObject({
      code: 1,
      err: expect.stringContaining("tiles/autumn/set.md"),
    });
  });
});

test("The same twice changes nothing, and nothing that was there is changed unasked, whatever is handed in", async () => {
  const piece = fc.constantFrom<readonly [string, string | Buffer]>(
    ["tiles/autumn/TB-101.md", record()],
    ["tiles/autumn/no-code-ab12cd34.md", record("m02", "fate: stuck\n")],
    ["tiles/autumn/TB-101.jpg", grey],
    ["tiles/evening/EV-1.md", "---\nmaker: m03\nlayers: [{glaze: 7}]\n---\nMine\n"],
    ["tiles/evening/EV-3.before.jpg", placed],
    ["tiles/evening/EV-1.jpg", grey],
    ["class.csv", "code,set,layer 1,layer 2\n,autumn,7,\nTB-101,autumn,liner,wax\n,autumn,7,\n"],
    ["notes.txt", "x"],
  );
  const zip = fc.uniqueArray(piece, { minLength: 1, selector: ([name]) => name });
  await fc.assert(
    fc.asyncProperty(fc.array(zip, { minLength: 1, maxLength: 3 }), async (zips) => {
      const archive = await archiveWith(autumn);
      const before = await sumsOf(archive);
      const folder = await handedIn({});
      await mkdir(join(folder, "in"));
      for (const [i, pieces] of zips.entries())
        await writeFile(join(folder, "in", `${i}.zip`), zipOfTexts(Object.fromEntries(pieces)));
      const run = () => tilebook("receive", "--archive", archive, "--yes", join(folder, "in"));
      const first = await run();
      const after = await sumsOf(archive);
      expect(after).toMatchObject(before);
      const second = await run();
      expect(await sumsOf(archive)).toEqual(after);
      expect(second.err).not.toContain("taken in.");
      expect([first.code, second.code]).not.toContain(3);
      expect((await errorsOf(archive)).errors).toEqual([]);
    }),
    { numRuns: 6 },
  );
});

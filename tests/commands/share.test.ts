/** What `share` hands on of a set, and that nothing else of the archive is in it. */
import { mkdir, readFile, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { unzipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { type Files, photograph, soundFiles } from "../support/archive-folder.ts";
import { archiveWith, folderWith } from "./archives.ts";
import { filesThatHold, listFiles, sumsOf } from "./site-files.ts";
import { tilebook } from "./tilebook.ts";

/** In every word that the shared set has nothing to do with. */
const mark = "xqz";

const record = (fields: readonly string[], notes = "") =>
  ["---", ...fields, "---", notes, ""].join("\n");

/** Everything that an archive can hold besides the set that is shared, with the mark in every field. */
async function others(): Promise<Files> {
  const ownSet = (id: string, more: readonly string[]) => ({
    [`tiles/${id}/set.md`]: record(
      [`name: Set ${id}`, "kind: class", "teacher: m09", `codes: ${id}-60..${id}-69`, ...more],
      `About ${mark}.`,
    ),
    [`tiles/${id}/${id}-1.md`]: record(
      [
        "maker: m09",
        `clay: ${mark}-clay`,
        `clay-batch: ${mark}`,
        `texture: ${mark} comb`,
        "layers:",
        `  - {glaze: ${mark}-glaze, coats: 2, detail: ${mark}}`,
        `  - {glaze: liner, detail: ${mark}}`,
        "  - {fired: g-1}",
        `result: {surface: satin, faults: [crazing], again: yes, next-time: ${mark}}`,
        `photo: {file: ${mark}-IMG.jpg, alt: ${mark}}`,
        `formerly: [${id}-0]`,
        "show-notes: yes",
      ],
      `Notes of ${mark}.`,
    ),
  });
  const picture = await photograph("#123456");
  return {
    "studio.yaml": [
      "format: 1",
      "studio: Eelgate Pottery",
      "address: https://eelgate.example/tests/",
      `repository: https://${mark}.example/archive`,
      `handing-in: Ask ${mark}.`,
      `welcome: Welcome to ${mark}.`,
      "makers:",
      "  m01: {name: Wren Ashdown, shown: yes}",
      "  m02: {name: Bram Tolliver, shown: initials}",
      "  m03: {name: Hesper Lund, shown: no}",
      `  m09: {name: Ann ${mark}, shown: yes}`,
    ].join("\n"),
    "pages/house.md": record([`title: House ${mark}`], `Rules of ${mark}.`),
    [`recipes/clays/${mark}-clay.md`]: record([`name: Clay ${mark}`, "cones: 5-9"], mark),
    [`recipes/materials/${mark}-ash.md`]: record(
      [`name: Ash ${mark}`, "formula: CaO", `cautions: ${mark}`],
      mark,
    ),
    [`recipes/glazes/${mark}-glaze.md`]: record(
      [
        `name: Glaze ${mark}`,
        "kind: glaze",
        "cones: 5-7",
        `ingredients: [{material: ${mark}-ash, parts: 20}, {material: potash-feldspar, parts: 60}, {material: silica, parts: 20}]`,
      ],
      mark,
    ),
    [`recipes/glazes/${mark}-unused.md`]: record(
      [`name: Unused ${mark}`, "kind: glaze", `bought: {maker: ${mark}}`],
      mark,
    ),
    [`tiles/firings/${mark}-g.md`]: record(
      ["on: 2026-11-20", "kind: glaze", `kiln: Kiln ${mark}`, "cone: 6"],
      mark,
    ),
    [`tiles/${mark}-loose.md`]: record([`layers: [{glaze: soot, detail: ${mark}}]`], mark),
    ...ownSet(`${mark}-seen`, [`jars: {8: ${mark}-glaze}`]),
    ...ownSet(`${mark}-kept`, ["listed: no", "link: w3tq5mzb7hx2vc4nrd6yfp2cja"]),
    [`tiles/${mark}-seen/${mark}-IMG.jpg`]: picture,
    [`tiles/${mark}-seen/${mark}-seen-1.detail-${mark}.jpg`]: await photograph("#654321"),
    [`tiles/${mark}-kept/${mark}-IMG.jpg`]: await photograph("#345612"),
  };
}

/** Shares a set of the sound archive with these files besides. */
async function share(files: Files, ...words: readonly string[]) {
  const archive = await archiveWith(files);
  const folder = join(archive, "handed", "on");
  const ended = await tilebook("share", ...words, "--archive", archive, "--out", folder, "--yes");
  return { archive, folder, ...ended };
}

const tilesIn = async (folder: string) =>
  (await listFiles(folder)).filter((file) => /^tiles\/.+\.html$/u.test(file));

/** What a zip holds, put into a folder of its own. */
async function unpack(zip: string): Promise<string> {
  const folder = await folderWith({});
  for (const [name, content] of Object.entries(unzipSync(await readFile(zip)))) {
    await mkdir(dirname(join(folder, name)), { recursive: true });
    await writeFile(join(folder, name), content);
  }
  return folder;
}

describe("a set that is shared", () => {
  test("holds no byte of another record, maker, photograph's name or of what the studio says of itself", async () => {
    const { code, folder: out } = await share(await others(), "evening");
    expect(code).toBe(0);
    const unpacked = await unpack(`${out}.zip`);
    for (const folder of [out, unpacked]) {
      expect(await filesThatHold(folder, mark)).toEqual([]);
      expect((await listFiles(folder)).filter((file) => file.includes(mark))).toEqual([]);
      for (const words of ["HID-1", "Quiet class", "k7wq2mzt4hx3vb5nrd6yfp2cja", "m01", "Hesper"])
        expect(await filesThatHold(folder, words), words).toEqual([]);
    }
    expect(await tilesIn(out)).toEqual(["ev-1", "ev-2", "ev-3", "old-1"].map(toPage));
    expect(await filesThatHold(out, "Wren Ashdown")).toContain("tiles/ev-1.html");
  });

  test("says on every page that its figures rest on its own tiles", async () => {
    const { folder: out } = await share({}, "evening");
    const pages = (await listFiles(out)).filter((file) => /^(?!old-1).+\.html$/u.test(file));
    expect(pages.length).toBeGreaterThan(20);
    const said =
      "These pages show Evening class alone: every count and figure rests on its own tiles, since other tests of the studio are not here.";
    for (const page of pages) expect(await readFile(join(out, page), "utf8"), page).toContain(said);
  });

  test("is in the zip as it is in the folder, and the same archive gives the same zip", async () => {
    const first = await share({}, "evening");
    const unpacked = await unpack(`${first.folder}.zip`);
    const { ".tilebook.json": _, ...written } = await sumsOf(first.folder);
    expect(await sumsOf(join(unpacked, "on"))).toEqual(written);
    const second = await share({}, "evening");
    expect(await readFile(`${second.folder}.zip`)).toEqual(await readFile(`${first.folder}.zip`));
  });

  test("is told before it is written: tiles, names, words that speak of others, and where it is", async () => {
    const soot = record(
      ["name: Soot", "kind: glaze", "bought: {maker: Oxbow}"],
      "As on HID-1, and old-1.",
    );
    const { archive, folder, out, err } = await share(
      { "recipes/glazes/soot.md": soot },
      "evening",
    );
    expect(err.split("\n")).toEqual([
      "Evening class: 3 tiles with 2 photographs, and what they use.",
      "Named in it: B. T., Wren Ashdown.",
      "  left as it is: recipes/glazes/soot.md speaks of HID-1, which is not in what you share",
    ]);
    expect(out.replace(/\d\.\d MB/u, "N MB").replaceAll(archive, "ARCHIVE")).toBe(
      [
        "Written: the folder ARCHIVE/handed/on, and the same as one file: ARCHIVE/handed/on.zip (N MB).",
        "Evening class is listed, for everyone to find: https://eelgate.example/tests/sets/evening.html",
      ].join("\n"),
    );
    expect(await tilesIn(folder)).not.toEqual([]);
  });

  test("that is unlisted stands by itself, and the command alone says where its link is", async () => {
    const { folder, out } = await share({}, "hidden");
    expect(out).toContain(
      "Quiet class is not listed; it is reached by its link alone: https://eelgate.example/tests/s/k7wq2mzt4hx3vb5nrd6yfp2cja/",
    );
    expect(await tilesIn(folder)).toEqual(["hid-1"].map(toPage));
    expect(await filesThatHold(folder, "k7wq2mzt4hx3vb5nrd6yfp2cja")).toEqual(["404.html"]);
  });
});

describe("what is shared with families", () => {
  const families = {
    "tiles/evening/EV-4.md": record(
      [
        "maker: m01",
        "layers: [{glaze: soot}, {fired: g-1}]",
        "result: {surface: matte, again: changed, next-time: Two coats of hush}",
        "show-notes: yes",
      ],
      "I like the loud foot.",
    ),
    "tiles/evening/EV-5.md": record(
      [
        "layers: [{glaze: soot}, {fired: g-1}]",
        "result: {surface: matte, next-time: Quieter still}",
      ],
      "Nobody need know.",
    ),
  };
  const shareWith = async (more: Files = {}) => {
    const pictures = {
      "tiles/evening/EV-4.jpg": await photograph("#6b2f86"),
      "tiles/evening/EV-5.jpg": await photograph("#2b7f86"),
    };
    return share({ ...families, ...pictures, ...more }, "evening", "--for", "families");
  };

  test("is without tiles that nobody would make again, without those that have no photograph, and says of how many", async () => {
    const { folder, err, out } = await shareWith();
    expect(await tilesIn(folder)).toEqual(["ev-1", "ev-4", "ev-5", "old-1"].map(toPage));
    expect(err.split("\n").slice(0, 3)).toEqual([
      "Evening class: 3 tiles with 3 photographs, and what they use.",
      "3 of 5 tiles are shown here.",
      "Left out are tiles without a photograph, tiles that nobody would make again, and notes that were not marked to be shown.",
    ]);
    expect(out).toContain("That page shows the whole set.");
    expect(await readFile(join(folder, "sets/evening.html"), "utf8")).toContain(
      "3 of 5 tiles are shown here.",
    );
    expect(await filesThatHold(folder, "What to avoid")).toEqual([]);
    for (const words of ["EV-2", "EV-3", "EV-20", "B. T.", "running"])
      expect(await filesThatHold(join(folder, "tiles"), words), words).toEqual([]);
  });

  test("holds notes and next-time only where the record says show-notes: yes", async () => {
    const { folder } = await shareWith();
    for (const words of ["the loud foot", "Two coats of hush"])
      expect(await filesThatHold(folder, words)).toContain("tiles/ev-4.html");
    for (const words of ["Nobody need know", "Quieter still", "White over dark"])
      expect(await filesThatHold(folder, words)).toEqual([]);
  });

  test("holds no address that leads to the rest, and no sheets of codes", async () => {
    const sound = await soundFiles();
    const studio = `${String(sound["studio.yaml"])}\nwebsite: https://eelgate.example/\n`;
    const { folder } = await shareWith({ "studio.yaml": studio });
    expect(await filesThatHold(folder, "eelgate.example")).toEqual([]);
    const files = await listFiles(folder);
    expect(files.filter((file) => /^(labels|notes|shelf)\//u.test(file))).toEqual([]);
  });
});

describe("nothing is written", () => {
  const refused = async (...words: readonly string[]) => {
    const archive = await archiveWith({});
    const { code, err } = await tilebook("share", ...words, "--archive", archive);
    return { code, err, files: (await listFiles(archive)).filter((file) => /shared/u.test(file)) };
  };

  test("where there is no such set, or where nobody can be asked", async () => {
    expect(await refused("mornings", "--yes")).toEqual({
      code: 2,
      err: "There is no set “mornings” in this archive. Nothing was written.",
      files: [],
    });
    expect((await refused("../evening", "--yes")).code).toBe(2);
    const { code, err, files } = await refused("evening");
    expect({ code, files }).toEqual({ code: 0, files: [] });
    expect(err).toContain("Nothing was changed: add --yes to do it where nobody can be asked.");
  });

  test("over a zip that somebody else put where this one belongs", async () => {
    const archive = await archiveWith({ "out/class.zip": "theirs" });
    const folder = join(archive, "out", "class");
    const run = () =>
      tilebook("share", "evening", "--archive", archive, "--out", folder, "--yes", "--quiet");
    const { code, err } = await run();
    expect({ code, err }).toEqual({
      code: 2,
      err: `${folder}.zip is there already, and Tilebook did not write it. Take it away, or name another folder with --out. Nothing was written.`,
    });
    expect(await readFile(`${folder}.zip`, "utf8")).toBe("theirs");
  });
});

test("what is shared into the archive itself stays out of its repository", async () => {
  const archive = await archiveWith({});
  const run = () => tilebook("share", "evening", "--archive", archive, "--yes", "--quiet");
  expect((await run()).code).toBe(0);
  expect(await readFile(join(archive, "shared", ".gitignore"), "utf8")).toBe("*\n");
  expect((await run()).code).toBe(0);
  expect((await tilebook("check", "--archive", archive)).code).toBe(0);
});

const toPage = (code: string) => `tiles/${code}.html`;

/** One build of one archive outside the checkout: what stands in the site, and what does not. */
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { parse } from "csv-parse/sync";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import * as z from "zod";
import * as rows from "../../src/publish/data/rows.ts";
import { writeFolder } from "../support/archive-folder.ts";
import { removeFolder } from "../support/remove-folder.ts";
import { plantedFiles, plantedKeys } from "./planted.ts";
import { filesThatHold, listFiles } from "./site-files.ts";
import { type Ended, tilebook } from "./tilebook.ts";

const hiddenRoot = "s/k7wq2mzt4hx3vb5nrd6yfp2cja/";
const isHidden = (file: string) => file.startsWith(hiddenRoot);

let archive: string;
let site: string;
let ended: Ended;
let files: readonly string[];

beforeAll(async () => {
  archive = await writeFolder(await plantedFiles());
  site = `${archive}-site`;
  ended = await tilebook("build", "--archive", archive, "--out", site);
  files = ended.code === 0 ? await listFiles(site) : [];
});

afterAll(async () => {
  await removeFolder(archive);
  await removeFolder(site);
});

const read = (file: string) => readFile(join(site, file), "utf8");
const pages = () => files.filter((file) => file.endsWith(".html"));

test("the build says what it did, and on standard output nothing", () => {
  expect(ended).toMatchObject({ code: 0, out: "" });
  expect(ended.err).toMatch(/4 tiles, 3 glazes, 1 firings: \d+ pages written, 0 carried over/u);
});

test("the archive itself is left as it was, but for what is remembered", async () => {
  const written = Object.keys(await plantedFiles()).sort();
  const now = (await listFiles(archive)).filter((file) => !file.startsWith(".cache/"));
  expect(now.map((file) => file.normalize("NFC"))).toEqual(written);
});

describe("the site", () => {
  test("has a page for each thing, its pictures, styles, scripts, search and a 404 page", () => {
    expect(files).toEqual(
      expect.arrayContaining([
        ".tilebook.json",
        "404.html",
        "assets/tile.css",
        "care.html",
        "clays/buff.html",
        "cones/6.html",
        "data/facets.js",
        "firings/g-1.html",
        "glazes/grå.html",
        "glazes/liner.html",
        "glazes/soot.html",
        "index.html",
        "materials/whiting.html",
        "pagefind/pagefind.js",
        "pairs/liner--over--soot.html",
        "sets/evening.html",
        "sitemap.xml",
        "tiles/blå-7.html",
        "tiles/ev-1.html",
        "tiles/ev-2.html",
        "tiles/ev-3.html",
        "tiles/old-1.html",
      ]),
    );
    expect(files.filter((file) => /^pictures\/.+\.(jpg|webp)$/u.test(file)).length).toBeGreaterThan(
      4,
    );
  });

  test("has nothing in it of the machine it was built on", async () => {
    for (const words of [archive, site, process.cwd()]) {
      expect(await filesThatHold(site, words)).toEqual([]);
    }
  });
});

const tables = {
  tiles: rows.tileRow,
  glazes: rows.glazeRow,
  firings: rows.firingRow,
  clays: rows.clayRow,
  materials: rows.materialRow,
  sets: rows.setRow,
  grid: rows.pairRow,
} satisfies Record<string, z.ZodType>;

describe("the data files", () => {
  const table = async (name: string) => JSON.parse(await read(`data/${name}.json`));

  test.each(Object.entries(tables))(
    "%s.json has rows with every field, sorted by id",
    async (name, row) => {
      const found = z.array(row).parse(await table(name));
      const fields = Object.keys(row.shape).sort();
      expect(found.length).toBeGreaterThan(0);
      for (const each of found) expect(Object.keys(each).sort()).toEqual(fields);
      const ids = found.map(({ id }) => id);
      expect(ids).toEqual([...new Set(ids)].sort());
    },
  );

  test.each(Object.keys(tables))("%s.json is what the JSON Schema beside it says", async (name) => {
    const schema = JSON.parse(await read(`data/${name}.schema.json`));
    const validate = new Ajv2020({ strict: true, allErrors: true }).compile(schema);
    expect(validate(await table(name)), JSON.stringify(validate.errors)).toBe(true);
    const [first, ...rest] = await table(name);
    const { id: _, ...withoutId } = first;
    expect(validate([withoutId, ...rest])).toBe(false);
    expect(validate([{ ...first, more: 1 }, ...rest])).toBe(false);
  });

  test("lead from every url in them to a page of the site", async () => {
    for (const name of Object.keys(tables)) {
      for (const { url } of await table(name)) expect(files).toContain(url);
    }
  });

  test("tell a tile as it was written down, and no more of its maker than may be shown", async () => {
    const tiles = z.array(rows.tileRow).parse(await table("tiles"));
    expect(tiles.map(({ id, maker }) => [id, maker])).toEqual([
      ["Blå-7", null],
      ["EV-1", "Wren Ashdown"],
      ["EV-2", "B. T."],
      ["EV-3", null],
    ]);
    expect(tiles.find(({ id }) => id === "EV-1")).toMatchObject({
      url: "tiles/ev-1.html",
      set: "evening",
      glazed: "2026-10-14",
      stage: "recorded",
      clay: "buff",
      texture: "smooth",
      shape: "flat",
      cone: "6",
      atmosphere: "oxidation",
      surface: ["satin"],
      effects: ["breaking"],
      faults: [],
      again: "yes",
      layers: [
        { step: "fired", kind: "bisque", firing: null },
        { step: "coat", glazes: ["soot"], coats: 2, by: "brush", where: ["all"] },
        { step: "coat", glazes: ["liner"], coats: 1, by: "dip", where: ["all"] },
        { step: "fired", kind: "glaze", firing: "g-1", shelf: "top" },
      ],
    });
  });

  test("give the chemistry of a mixed glaze in sums that close, and none of a bought one", async () => {
    const glazes = z.array(rows.glazeRow).parse(await table("glazes"));
    const sum = (amounts: Record<string, number> = {}) =>
      Object.values(amounts).reduce((total, amount) => total + amount, 0);
    const { chemistry: mixed } = glazes.find(({ id }) => id === "liner") ?? {};
    expect(sum(mixed?.weightPercent)).toBeCloseTo(100, 4);
    expect(sum(mixed?.molePercent)).toBeCloseTo(100, 4);
    const fluxes = ["K2O", "Na2O", "CaO", "MgO"].map((oxide) => mixed?.unity?.[oxide] ?? 0);
    expect(fluxes.reduce((total, amount) => total + amount, 0)).toBeCloseTo(1, 4);
    expect(glazes.find(({ id }) => id === "soot")?.chemistry).toBeNull();
  });

  test("hold the tiles as a spreadsheet can open them, a row each", async () => {
    const lines = parse(await read("data/tiles.csv"), { bom: true, columns: true }) as Record<
      string,
      string
    >[];
    expect(lines.map(({ id }) => id)).toEqual(["Blå-7", "EV-1", "EV-2", "EV-3"]);
    expect(lines[1]).toMatchObject({
      surface: "satin",
      layers: "fired bisque; soot × 2; liner × 1; fired g-1",
    });
  });
});

describe("privacy", () => {
  test.each(plantedKeys)("the maker's key %s stands in no file of the site", async (key) => {
    expect(await filesThatHold(site, key)).toEqual([]);
  });

  test("a name that may not be shown, or by its initials alone, stands in no file", async () => {
    for (const name of ["Hesper", "Quillane", "Bramwell", "Tolliver"]) {
      expect(await filesThatHold(site, name)).toEqual([]);
    }
    expect(await filesThatHold(site, "Wren Ashdown")).toContain("tiles/ev-1.html");
  });

  test.each(["Quiet class", "HID-1", "Nobody but us", "k7wq2mzt4hx3vb5nrd6yfp2cja"])(
    "of an unlisted set nothing is found but by its link: “%s”",
    async (words) => {
      const holding = await filesThatHold(site, words);
      expect(holding.filter((file) => !isHidden(file))).toEqual([]);
      if (words !== "k7wq2mzt4hx3vb5nrd6yfp2cja") expect(holding.some(isHidden)).toBe(true);
    },
  );

  test("an unlisted set's photographs lie with it alone, and its pages ask not to be listed", async () => {
    const pictures = (under: string) =>
      files
        .filter((file) => file.startsWith(`${under}pictures/`))
        .map((file) => file.split("/").at(-1));
    expect(pictures(hiddenRoot).length).toBeGreaterThan(0);
    expect(pictures(hiddenRoot).filter((name) => pictures("").includes(name))).toEqual([]);
    for (const page of pages().filter(isHidden)) {
      expect(await read(page), page).toContain('<meta name="robots" content="noindex, nofollow"');
    }
  });

  test("an unlisted set tells nothing of others' tiles", async () => {
    for (const words of ["EV-1", "Evening class", "Wren"]) {
      expect((await filesThatHold(site, words)).filter(isHidden)).toEqual([]);
    }
  });
});

describe("contributors' words", () => {
  test.each(["tiles/ev-1.html", "tiles/ev-2.html", "glazes/soot.html"])(
    "stand on %s as words: no template, no tag, no picture, no link but to the web",
    async (file) => {
      const page = await read(file);
      expect(page).toContain("{{ it }} and {% raw %} show &lt;script&gt;alert(1)&lt;/script&gt;");
      expect(page).toContain("&lt;img src=x onerror=alert(1)&gt;");
      expect(page).not.toMatch(
        /<iframe|onerror=["']|(href|src)="(javascript|data):|(href|src)="\/\//u,
      );
      expect(page).not.toMatch(/<img[^>]+(evil|studio\.yaml|photo\.png)/u);
      expect(page.match(/<a [^>]*href="https?:[^"]*"[^>]*>[^<]*/gu)).toEqual([
        expect.stringContaining('href="https://evil.example/p.png" rel="nofollow noopener">web'),
        expect.stringContaining('href="https://clay.example/notes" rel="nofollow noopener">a good'),
      ]);
    },
  );

  test("stand in names, choices of their own and addresses of every alphabet", async () => {
    const tile = await read("tiles/blå-7.html");
    expect(tile).toContain("&lt;b>own&lt;/b> {{ words }}");
    expect(await read("glazes/grå.html")).toContain("Grå &amp; &lt;Grön>");
  });
});

describe("the studio's address", () => {
  const canonical = (page: string) => /<link rel="canonical" href="([^"]*)"/u.exec(page)?.[1];

  test("stands in what the head says of the page, in sitemap, feed and what data says of itself, and nowhere else", async () => {
    const saysWhose =
      /^(?:sitemap|feed)\.xml$|^CITATION\.cff$|^data\.html$|^data\/archive\.json$|\.(?:parquet|sqlite)$/u;
    for (const file of await filesThatHold(site, "eelgate.example")) {
      if (saysWhose.test(file)) continue;
      expect(file).toMatch(/\.html$/u);
      const rest = (await read(file)).replace(
        /<link rel="canonical"[^>]*>|<meta property="og:[^>]*>|<script type="application\/ld\+json">.*?<\/script>/gu,
        "",
      );
      expect(rest, file).not.toContain("eelgate.example");
    }
  });

  test("leads to each page from its canonical link", async () => {
    expect(canonical(await read("tiles/ev-1.html"))).toBe(
      "https://eelgate.example/tests/tiles/ev-1.html",
    );
    expect(canonical(await read("index.html"))).toMatch(
      /^https:\/\/eelgate\.example\/tests\/(index\.html)?$/u,
    );
  });

  test("leads to pages that are there from the sitemap, each tile among them", async () => {
    const listed = [...(await read("sitemap.xml")).matchAll(/<loc>([^<]+)<\/loc>/gu)].map(
      ([, url]) => decodeURIComponent(String(url)).replace("https://eelgate.example/tests/", ""),
    );
    expect(listed.filter((file) => !files.includes(file === "" ? "index.html" : file))).toEqual([]);
    expect(listed).toEqual(expect.arrayContaining(["tiles/ev-1.html", "tiles/blå-7.html"]));
    expect(listed).not.toContain("tiles/old-1.html");
    expect(listed.filter(isHidden)).toEqual([]);
  });
});

test("a code it was published under before leads on to the tile", async () => {
  const page = await read("tiles/old-1.html");
  expect(page).toMatch(/<meta http-equiv="refresh" content="0; url=(\.\.\/tiles\/)?ev-1\.html"/u);
  expect(page).toMatch(/<a [^>]*href="(\.\.\/tiles\/)?ev-1\.html"/u);
  expect(await read("data/tiles.json")).not.toContain("OLD-1");
});

/** The manifest, the schemas and the citation: what programs read before anything else. */
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { Ajv } from "ajv";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { makeCitation } from "../../../src/publish/citation.ts";
import { siteDataOf } from "../../../src/publish/data/site-data.ts";
import { tables } from "../../../src/publish/data/tables/all.ts";
import { project } from "../../house/files.ts";
import { listPages } from "../../support/list-pages.ts";
import { examine, sitesOf } from "../../support/site-in-memory.ts";
import { readParquet } from "../../support/unpack-data.ts";
import { demonstration } from "./demonstration.ts";

const catalogue = demonstration();
const { studio } = catalogue;
const data = siteDataOf(catalogue);
const contents = new Map<string, Buffer>();
for (const entry of data.entries) contents.set(entry.path, Buffer.from(await data.make(entry)));
const read = (path: string) => JSON.parse(contents.get(path)?.toString("utf8") ?? "null");
const manifest = read("data/archive.json");

describe("data/archive.json", () => {
  test("is as its schema says, as another program reads it", () => {
    const holds = new Ajv2020({ strict: true, allErrors: true }).compile(
      read("data/archive.schema.json"),
    );
    expect(holds(manifest), JSON.stringify(holds.errors)).toBe(true);
    for (const bad of [
      "../secret",
      "/data/tiles.json",
      "data/../x.json",
      "https://eelgate.example/x",
    ])
      expect(holds({ ...manifest, files: [{ ...manifest.files[0], path: bad }] }), bad).toBe(false);
    expect(
      holds({ ...manifest, files: Array.from({ length: 501 }, () => manifest.files[0]) }),
    ).toBe(false);
  });

  test("tells every other data file, how long it is and its sum", () => {
    expect(manifest.files.map(({ path }: { path: string }) => path)).toEqual(
      [...contents.keys()].filter((path) => path !== "data/archive.json"),
    );
    for (const { path, bytes, sha256, schema } of manifest.files) {
      const content = contents.get(path) ?? Buffer.alloc(0);
      expect({ path, bytes: content.length }).toEqual({ path, bytes });
      expect(createHash("sha256").update(content).digest("hex"), path).toBe(sha256);
      if (schema !== null) expect(contents.has(schema), schema).toBe(true);
    }
  });

  test("says whose it is, what may be done with it and how much there is, and no time", () => {
    const { files: _, ...about } = manifest;
    expect(about).toEqual({
      format: "tilebook-data",
      version: 1,
      studio: "Eelgate Pottery",
      address: "https://eelgate.example/tests/",
      repository: "https://git.example/eelgate/tests",
      licence: {
        words: "CC BY 4.0",
        spdx: "CC-BY-4.0",
        address: "https://creativecommons.org/licenses/by/4.0/",
      },
      counts: {
        tiles: catalogue.tiles.length,
        glazes: catalogue.glazes.length,
        pairs: catalogue.pairs.length,
        firings: catalogue.firings.length,
        clays: catalogue.clays.length,
        materials: catalogue.materials.length,
        sets: catalogue.sets.length,
      },
    });
  });

  test("is the same when all is made again", async () => {
    const again = siteDataOf({ ...catalogue });
    for (const entry of again.entries)
      expect(
        Buffer.compare(
          Buffer.from(await again.make(entry)),
          contents.get(entry.path) ?? Buffer.alloc(0),
        ),
        entry.path,
      ).toBe(0);
  });

  test("is not there for an unlisted set, nor is any data file, nor their page", () => {
    const unlisted = { ...catalogue, studio: { ...studio, unlisted: true } };
    expect(siteDataOf(unlisted).entries).toEqual([]);
    const paths = listPages(unlisted).map(({ path }) => path);
    expect(paths).not.toContain("data.html");
    expect(listPages(catalogue).map(({ path }) => path)).toContain("data.html");
  });
});

test("an archive that has just begun has every file, each empty and sound", async () => {
  const { read: begun, problems } = examine({ "studio.yaml": "format: 1\nstudio: Eelgate\n" });
  if (!begun.archive) throw new Error(JSON.stringify(problems));
  const empty = siteDataOf(sitesOf(begun.archive, problems).catalogue);
  for (const entry of empty.entries)
    expect(await empty.make(entry), entry.path).not.toHaveLength(0);
  expect(empty.files.map(({ path }) => path)).toEqual(data.files.map(({ path }) => path));
  const layers = empty.files.find(({ path }) => path === "data/layers.parquet");
  expect(await readParquet((await layers?.make()) as Uint8Array)).toEqual([]);
});

test("data/tables.json tells every table and column", () => {
  const told = read("data/tables.json");
  expect(told.version).toBe(1);
  expect(
    told.tables.map(({ name, columns }: { name: string; columns: { name: string }[] }) => [
      name,
      columns.map((column) => column.name),
    ]),
  ).toEqual(tables.map(({ name, columns }) => [name, columns.map((column) => column.name)]));
});

describe("CITATION.cff", () => {
  const schema = JSON.parse(
    readFileSync(join(project, "tests/reference/cff-1.2.0.schema.json"), "utf8"),
  );
  const holds = new Ajv({ strict: false, validateFormats: false, allErrors: true }).compile(schema);

  test("of the data is as the Citation File Format says, with the studio as its author", () => {
    const cited = parse(makeCitation(studio).content);
    expect(holds(cited), JSON.stringify(holds.errors)).toBe(true);
    expect(cited).toMatchObject({
      type: "dataset",
      title: "Glaze tests of Eelgate Pottery",
      authors: [{ name: "Eelgate Pottery" }],
      license: "CC-BY-4.0",
      url: "https://eelgate.example/tests/",
      "repository-code": "https://git.example/eelgate/tests",
    });
  });

  test("holds whatever a studio is called, and a licence in its own words", () => {
    const words = 'Ask Marit: # no: "yes"\u2028 {a} \u0085 & *b';
    const cited = parse(
      makeCitation({ ...studio, name: words, licence: words, address: null, repository: null })
        .content,
    );
    expect(holds(cited), JSON.stringify(holds.errors)).toBe(true);
    expect(cited.authors).toEqual([{ name: words }]);
    expect(cited.abstract).toContain(words);
    expect(cited).not.toHaveProperty("license");
    expect(cited).not.toHaveProperty("url");
  });

  test("of Tilebook itself is as the format says, under the licence of the package", () => {
    const cited = parse(readFileSync(join(project, "CITATION.cff"), "utf8"));
    expect(holds(cited), JSON.stringify(holds.errors)).toBe(true);
    const { license } = JSON.parse(readFileSync(join(project, "package.json"), "utf8"));
    expect(cited).toMatchObject({ type: "software", title: "Tilebook", license });
    expect(cited.authors).toEqual([{ name: "The Tilebook developers" }]);
  });

  test("is refused by the format's schema where its author, title or address is wrong", () => {
    const cited = parse(makeCitation(studio).content);
    for (const change of [
      { authors: [] },
      { title: "" },
      { url: "eelgate" },
      { license: "CC BY" },
      { "cff-version": "1.1.0" },
      { maker: "m07" },
    ])
      expect(holds({ ...cited, ...change }), JSON.stringify(change)).toBe(false);
  });
});

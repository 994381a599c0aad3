/** The schemas for editors, held against the demonstration and against slips that people make. */
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { Ajv } from "ajv";
import { beforeAll, describe, expect, test } from "vitest";
import { parse } from "yaml";
import { yamlOf } from "../../src/archive/parse-text.ts";
import { readArchive } from "../../src/archive/read-archive.ts";
import { carriedWords } from "../../src/chemistry/minerals/minerals.ts";
import { editorSchemas } from "../../src/editing/editor-schemas.ts";
import type { ReadArchive } from "../../src/reader/read-archive-files.ts";
import { project } from "../house/files.ts";

/** As an editor reads YAML 1.2: numbers and truth values are no texts. */
function readAsEditors(text: string, form: "markdown" | "yaml"): unknown {
  // Two cones, 5 and 05, are one number.
  return parse(yamlOf(text, form) ?? "", { uniqueKeys: false });
}

async function open(folder: string) {
  const dir = join(project, folder);
  const read = await readArchive(dir, { builtInMaterials: carriedWords });
  if (!read.archive) throw new Error("No archive was read");
  const ajv = new Ajv({
    strict: true,
    strictRequired: false,
    allowUnionTypes: true,
    validateFormats: false,
  });
  const schemas = new Map(
    [...editorSchemas(read.archive)].map(([file, text]) => [
      file.replace(".schema.json", ""),
      ajv.compile(JSON.parse(text)),
    ]),
  );
  return { dir, read, schemas };
}

let demo: Awaited<ReturnType<typeof open>>;
let small: Awaited<ReturnType<typeof open>>;
beforeAll(async () => {
  [demo, small] = await Promise.all([open(""), open("tests/archives/sound")]);
});

async function refused({ dir, read, schemas }: typeof demo) {
  const files: ReadArchive["recordFiles"][number][] = [...read.recordFiles];
  const found: string[] = [];
  for (const { kind, file } of [...files, { kind: "studio", file: "studio.yaml" }]) {
    const text = await readFile(join(dir, file), "utf8");
    const validate = schemas.get(kind);
    if (!validate?.(readAsEditors(text, kind === "studio" ? "yaml" : "markdown")))
      found.push(`${file}: ${JSON.stringify(validate?.errors?.[0])}`);
  }
  expect(files.length).toBeGreaterThan(5);
  return found;
}

test("every record of the demonstration passes the schema of its kind", async () => {
  expect(await refused(demo)).toEqual([]);
});

test("every record of a small sound archive passes too", async () => {
  expect(await refused(small)).toEqual([]);
});

describe("a slip fails where an editor can see it", () => {
  test.each([
    ["tile", { layers: [{ glaze: "soot", coats: [2] }] }],
    ["tile", { layers: [{ glaze: "soot", bye: "dip" }] }],
    ["tile", { layers: [{ glaze: "soot", by: "dipp" }] }],
    ["tile", { layers: [] }],
    ["tile", { glazed: "2026-10-14" }],
    ["tile", { layers: [{ resist: "glue" }] }],
    ["tile", { layers: [{ glaze: "soot" }], result: { again: "maybe" } }],
    ["glaze", { name: "X", kind: "glaze" }],
    [
      "glaze",
      { name: "X", kind: "glaze", bought: { maker: "Y" }, blend: [{ glaze: "a", parts: 1 }] },
    ],
    ["glaze", { name: "X", kind: "glase", bought: { maker: "Y" } }],
    ["material", { name: "X", formula: "SiO2", analysis: { SiO2: 100 } }],
    ["firing", { kind: "glaze", schedule: [{ rate: 100 }] }],
    ["set", { name: "X", listed: "perhaps" }],
    ["studio", { format: 2, studio: "X" }],
  ])("%s %j", (kind, record) => {
    expect(demo.schemas.get(kind)?.(record)).toBe(false);
  });

  test.each([
    [
      "tile",
      { maker: "nobody-yet", clay: "new-clay", layers: [{ glaze: "not-yet" }, { glaze: 7 }] },
    ],
    ["firing", { kind: "glaze", tiles: { top: ["ZZ-1..ZZ-9", "ZZ-12"] } }],
    ["glaze", { name: "X", kind: "glaze", ingredients: [{ material: "moon-dust", parts: 1 }] }],
  ])("an id that is new is no slip: %s %j", (kind, record) => {
    expect(demo.schemas.get(kind)?.(record)).toBe(true);
  });
});

test("they offer the archive's own ids, and of makers the keys alone", async () => {
  const archive = demo.read.archive;
  if (!archive) throw new Error("No archive was read");
  const text = editorSchemas(archive).get("tile.schema.json") ?? "";
  const { definitions } = JSON.parse(text);
  expect(definitions.glaze.enum).toEqual(expect.arrayContaining(["tidewrack", "soot"]));
  expect(definitions.maker.enum).toEqual(Object.keys(archive.studio.makers ?? {}));
  const names = Object.values(archive.studio.makers ?? {}).flatMap(({ name }) => name ?? []);
  expect(names.length).toBeGreaterThan(0);
  expect(names.filter((name) => text.includes(name))).toEqual([]);
});

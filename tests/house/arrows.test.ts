import { describe, expect, test } from "vitest";
import { findBreaches, findCircles } from "./breaches.ts";
import { listSources } from "./files.ts";
import { parseImports, readImports } from "./imports.ts";

const imports = listSources().flatMap(readImports);

describe("the house as it stands", () => {
  test("every file imports only what the plan opens to its room", () => {
    expect(imports.length).toBeGreaterThan(0);
    expect(findBreaches(imports)).toEqual([]);
  });

  test("no files import one another in a circle, types included", () => {
    expect(findCircles(imports)).toEqual([]);
  });
});

test("a command waits for nothing that only another needs: the list of commands loads none of them", () => {
  const loaded = new Set(["src/cli.ts"]);
  for (const file of loaded) {
    const at = imports.filter(({ from, typeOnly, lazy }) => from === file && !typeOnly && !lazy);
    for (const { to } of at) if ("file" in to) loaded.add(to.file);
  }
  const own = [...loaded].filter((file) => file.startsWith("src/commands/"));
  const notDescribing = own.filter((file) => !file.endsWith("-line.ts"));
  expect(own.length).toBeGreaterThan(notDescribing.length);
  expect(notDescribing.toSorted()).toEqual([
    "src/commands/arguments.ts",
    "src/commands/failure.ts",
    "src/commands/version.ts",
  ]);
  const rooms = new Set([...loaded].map((file) => file.split("/").slice(0, 2).join("/")));
  // What publish/ gives is only the word for a folder that no site may be written into.
  for (const light of ["src/cli.ts", "src/commands", "src/compiled", "src/disk", "src/publish"])
    rooms.delete(light);
  expect([...rooms]).toEqual([]);
});

describe("the reading of imports", () => {
  test("every way to import is seen", () => {
    const text = [
      'import { a } from "./a.ts";',
      'import type { B } from "./b.ts";',
      'import { type C } from "./c.ts";',
      'import "../styles.ts";',
      'export { d } from "./d.ts";',
      'export type * from "./e.ts";',
      'const f = await import("@scope/name/part");',
      'type G = import("node:fs").Stats;',
      "const h = await import(somewhere);",
    ].join("\n");
    const found = parseImports("src/terms/x.ts", text);
    expect(found.map(({ to, typeOnly }) => ({ ...to, typeOnly }))).toEqual([
      { file: "src/terms/a.ts", typeOnly: false },
      { file: "src/terms/b.ts", typeOnly: true },
      { file: "src/terms/c.ts", typeOnly: true },
      { file: "src/styles.ts", typeOnly: false },
      { file: "src/terms/d.ts", typeOnly: false },
      { file: "src/terms/e.ts", typeOnly: true },
      { package: "@scope/name", typeOnly: false },
      { builtin: "node:fs", typeOnly: true },
      { computed: true, typeOnly: false },
    ]);
  });
});

describe("the plan", () => {
  const breaches = (path: string, text: string) => findBreaches(parseImports(path, text));

  test("a leaf imports from no other room, not even a type", () => {
    expect(breaches("src/terms/x.ts", 'import type { A } from "../records/a.ts";')).toEqual([
      "src/terms/x.ts imports src/records/a.ts, but terms may import from no other room",
    ]);
  });

  test("a template takes types from the records, and nothing that runs", () => {
    const path = "templates/pages/tile.tsx";
    expect(breaches(path, 'import type { A } from "../../src/records/a.ts";')).toEqual([]);
    expect(breaches(path, 'import { a } from "../../src/records/a.ts";')).toEqual([
      `${path} imports src/records/a.ts, but templates may import from terms, types of records, chemistry, firing, colour, types of likeness, catalogue, words, drawing`,
    ]);
  });

  test("a pure room uses nothing of Node's", () => {
    expect(breaches("src/catalogue/x.ts", 'import { join } from "node:path";')).toEqual([
      "src/catalogue/x.ts uses node:path, but catalogue is pure",
    ]);
    expect(breaches("src/archive/x.ts", 'import { join } from "node:path";')).toEqual([]);
  });

  test("a package stays in its rooms, and one without a row in none", () => {
    expect(breaches("src/commands/x.ts", 'import sharp from "sharp";')).toEqual([
      "src/commands/x.ts imports sharp, which is for demo, photos",
    ]);
    expect(breaches("src/photos/x.ts", 'import a from "unheard-of/part";')).toEqual([
      "src/photos/x.ts imports unheard-of, which has no row",
    ]);
  });

  test("nothing but the program imports cli.ts", () => {
    expect(breaches("src/commands/x.ts", 'import { main } from "../cli.ts";')).toEqual([
      "src/commands/x.ts imports src/cli.ts, which is for src/program.ts",
    ]);
    expect(breaches("src/program.ts", 'await import("./cli.ts");')).toEqual([]);
  });

  test("a room without a row, an import out of the house and a computed one are breaches", () => {
    expect(breaches("src/attic/x.ts", 'import { a } from "../terms/a.ts";')).toEqual([
      "src/attic/x.ts stands in a room that has no row: attic",
    ]);
    expect(breaches("src/commands/x.ts", 'import a from "../../tests/a.ts";')).toEqual([
      "src/commands/x.ts imports tests/a.ts, but commands may import from every room",
    ]);
    expect(breaches("src/publish/x.ts", "await import(name);")).toEqual([
      "src/publish/x.ts computes what it imports; name it in plain quotes",
    ]);
  });

  test("a circle is found through a type import, and told once", () => {
    const circle = [
      ...parseImports("src/terms/a.ts", 'import { b } from "./b.ts";'),
      ...parseImports("src/terms/b.ts", 'import type { C } from "./c.ts";'),
      ...parseImports("src/terms/c.ts", 'export * from "./b.ts";'),
    ];
    expect(findCircles(circle)).toEqual(["src/terms/b.ts -> src/terms/c.ts -> src/terms/b.ts"]);
  });
});

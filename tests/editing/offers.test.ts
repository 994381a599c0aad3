/** What is offered and explained at a place of a record, half-written or whole. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fc, test as property } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { textParser } from "../../src/archive/parse-text.ts";
import { explain } from "../../src/editing/explain.ts";
import { knownNames } from "../../src/editing/names.ts";
import { type Offer, offersAt } from "../../src/editing/offers.ts";
import { shapeOfRecord } from "../../src/editing/shape.ts";
import { readArchiveFiles } from "../../src/reader/read-archive-files.ts";
import { findCursor, findWordAt } from "../../src/reader/yaml-cursor.ts";
import { yamlSpan } from "../../src/reader/yaml-span.ts";
import { type RecordKind, recordKinds } from "../../src/records/kinds.ts";
import { readAs } from "../../src/records/read.ts";
import { longestYaml } from "../../src/terms/limits.ts";
import { project } from "../house/files.ts";
import { filesOf } from "../support/files-in-memory.ts";

const texts = {
  "studio.yaml": "format: 1\nstudio: X\nmakers: {m07: {name: Robin Clay}}\n",
  "recipes/clays/buff.md": "---\nname: Buff\ncones: 5-9\n---\n",
  "recipes/glazes/soot.md": "---\nname: Soot\nkind: glaze\nbought: {maker: Oxbow}\ncones: 6\n---\n",
  "tiles/evening/set.md": "---\nname: Evening\njars: {7: soot}\n---\n",
  "tiles/evening/T-1.md": "---\nlayers: [{glaze: 7}]\n---\n",
};
const { archive } = readArchiveFiles(filesOf(texts), { builtInMaterials: [], texts: textParser });
if (!archive) throw new Error("No archive was read");
const known = knownNames(archive, "evening");

type Kind = RecordKind["name"];

/** The offers where `|` stands. */
function offered(kind: Kind, marked: string): readonly Offer[] {
  const offset = marked.indexOf("|");
  const cursor = findCursor(marked.replace("|", ""), offset);
  return cursor ? offersAt(shapeOfRecord(kind), cursor, known) : [];
}

const labels = (offers: readonly Offer[]) => offers.map(({ label }) => label);

describe("a field's name", () => {
  test.each<[string, string, readonly string[], readonly string[]]>([
    ["at the top", "|", ["layers", "clay", "glazed"], ["glaze", "kind"]],
    ["half-written, below others", "maker: m07\nte|", ["texture"], ["maker"]],
    [
      "in a step of a list, block style",
      "layers:\n  - glaze: soot\n    |",
      ["coats", "by"],
      ["glaze", "shelf"],
    ],
    [
      "in a step between brackets",
      "layers:\n  - {glaze: soot, |",
      ["coats", "where"],
      ["resist", "glaze"],
    ],
    ["in a step of another kind", "layers:\n  - {fired: bisque, |}", ["shelf"], ["coats", "glaze"]],
    ["first in a step", "layers:\n  - |", ["glaze", "fired", "fade"], []],
    ["in a map in brackets", "result: {surface: satin, |", ["effects", "run"], ["surface"]],
    ["in a map below its name", "result:\n  surface: satin\n  |", ["effects"], ["surface"]],
    ["in a map of a list", "later:\n  - on: 2026-01-02\n    fau|", ["faults"], ["on"]],
    ["in CRLF lines", "maker: m07\r\nlayers:\r\n  - glaze: soot\r\n    |", ["coats"], ["glaze"]],
    ["while a line below is broken", "te|\nlayers: [{glaze: soot", ["texture"], []],
  ])("%s", (_, text, there, notThere) => {
    const found = labels(offered("tile", text));
    expect(found).toEqual(expect.arrayContaining([...there]));
    expect(found.filter((label) => notThere.includes(label))).toEqual([]);
  });

  test("of those of which there may be one, none is offered beside another", () => {
    expect(labels(offered("glaze", "name: X\n|"))).toContain("blend");
    expect(labels(offered("glaze", "bought: {maker: Y}\n|"))).not.toContain("blend");
  });

  test("a list whose entries have fields is begun with its first entry", () => {
    const [inLine] = offered("tile", "layers: |");
    const [below] = offered("tile", "layers:\n  |");
    expect([inLine?.text, inLine?.closing]).toEqual(["[{glaze: ", "}]"]);
    expect([below?.text, below?.closing]).toEqual(["- glaze: ", ""]);
  });

  test("what is needed comes first: of a step, what it is", () => {
    const found = labels(offered("tile", "layers:\n  - |"));
    expect(found.slice(0, 5)).toEqual(["glaze", "fade", "resist", "remove", "fired"]);
    expect(labels(offered("tile", "|"))[0]).toBe("layers");
  });
});

describe("a value", () => {
  test.each<[Kind, string, readonly string[]]>([
    ["tile", "shape: |", ["channel", "flat", "l-shape", "pot", "ring", "upright"]],
    ["tile", "clay: b|", ["buff"]],
    ["tile", "maker: |", ["m07"]],
    ["tile", "layers:\n  - {glaze: |", ["7", "soot"]],
    ["tile", "layers:\n  - fired: |", ["bisque", "glaze", "onglaze", "once", "raku"]],
    ["tile", "layers: [{glaze: soot, coats: |", []],
    ["tile", "later: [{on: 2026-01-02, surface: [dry, |", ["dry", "gloss", "matte", "satin"]],
    ["set", "defaults: {clay: |", ["buff"]],
    ["set", "jars:\n  7: |", ["soot"]],
    ["studio", "makers: {m07: {shown: |", ["initials", "no", "yes"]],
    ["firing", "tiles: {top: [|", ["T-1"]],
    ["tile", "photo: {alt: |", []],
    ["tile", "nonsense: |", []],
    ["tile", "# shape: |", []],
    ["studio", "welcome: |-\n  sha", []],
  ])("of a %s, %j", (kind, text, words) => {
    expect(labels(offered(kind, text))).toEqual([...words]);
  });

  test("tells what an id names: what is in a jar, a glaze's kind and cones", () => {
    const told = offered("tile", "layers: [{glaze: |").map(({ label, detail }) => [label, detail]);
    expect(told).toEqual([
      ["7", "Soot, jar 7: soot"],
      ["soot", "Soot, glaze, cone 6"],
    ]);
  });
});

describe("what is explained", () => {
  const explained = (kind: Kind, marked: string) => {
    const word = findWordAt(marked.replace("|", ""), marked.indexOf("|"));
    return word && explain(shapeOfRecord(kind), word, known);
  };

  test("of a field's name, its sentence and choices", () => {
    expect(explained("tile", "sha|pe: flat")).toMatchObject({
      field: "shape",
      sentence: "What was glazed; a flat tile if left out.",
      choices: ["channel", "flat", "l-shape", "pot", "ring", "upright"],
      ownWords: false,
      named: undefined,
    });
  });

  test("of an id, what it names", () => {
    expect(explained("tile", "layers: [{glaze: SO|OT}]")?.named).toMatchObject({
      name: "Soot",
      file: "recipes/glazes/soot.md",
    });
    expect(explained("tile", "layers: [{glaze: |7}]")?.named?.file).toBe("recipes/glazes/soot.md");
    expect(explained("glaze", "ingredients: [{material: fl|int, parts: 1}]")?.named?.word).toBe(
      "silica",
    );
  });

  test("of what nobody declared, nothing", () => {
    expect(explained("tile", "nonsense: a|bc")).toBeUndefined();
  });
});

/** Every record of the demonstration, with its kind. */
const demonstration = [
  ["studio", "studio.yaml"] as const,
  ...(["glazes", "clays", "materials"] as const).flatMap((folder) =>
    readdirSync(join(project, "recipes", folder)).map(
      (name) => [folder.slice(0, -1) as Kind, `recipes/${folder}/${name}`] as const,
    ),
  ),
  ...readdirSync(join(project, "tiles"), { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".md"))
    .map((name): readonly [Kind, string] => {
      const file = `tiles/${name.replaceAll("\\", "/")}`;
      if (file.startsWith("tiles/firings/")) return ["firing", file];
      return [file.endsWith("/set.md") ? "set" : "tile", file];
    }),
];

function yamlOf([kind, file]: readonly [Kind, string]): string {
  const text = readFileSync(join(project, file), "utf8");
  const span = yamlSpan(text, kind === "studio" ? "yaml" : "markdown");
  return span ? text.slice(span.from, span.to) : "";
}

property.prop([fc.constantFrom(...demonstration), fc.nat()])(
  "anywhere in the demonstration, asking never fails, and each choice that is offered is one that the schema takes",
  (record, anywhere) => {
    const yaml = yamlOf(record);
    const offset = anywhere % (yaml.length + 1);
    const [kind] = record;
    const shape = shapeOfRecord(kind);
    const word = findWordAt(yaml, offset);
    if (word) expect(() => explain(shape, word, known)).not.toThrow();
    const cursor = findCursor(yaml, offset);
    if (!cursor) return;
    const { schema } = recordKinds.find(({ name }) => name === kind) ?? {};
    for (const { kind: of, text } of offersAt(shape, cursor, known).filter(
      (it) => it.kind === "choice",
    )) {
      const nested = cursor.path.reduceRight<unknown>(
        (inside, step) => (typeof step === "number" ? [inside] : { [step]: inside }),
        text,
      );
      const read = schema && readAs(schema, nested as never);
      const faults = read && !read.ok ? read.faults : [];
      expect(of).toBe("choice");
      expect(
        faults.filter(({ code }) => code === "unknown-choice" || code === "not-yes-or-no"),
      ).toEqual([]);
    }
  },
);

test("at every place of a few whole records, cut off there, asking never fails", () => {
  for (const record of demonstration.filter((_, i) => i % 40 === 0)) {
    const yaml = yamlOf(record);
    for (let at = 0; at <= yaml.length; at += 1) {
      const cursor = findCursor(yaml, at);
      if (cursor) offersAt(shapeOfRecord(record[0]), cursor, known);
      const word = findWordAt(yaml.slice(0, at), at);
      if (word) explain(shapeOfRecord(record[0]), word, known);
    }
  }
});

test.each(["[", "- ", "{a: ", "a: ", "\n", "&a [*a,"])(
  "of “%s” as often as a record may be long, nothing is found, and asking does not fail",
  (piece) => {
    const yaml = piece.repeat(Math.floor(longestYaml / piece.length));
    expect(findWordAt(yaml, yaml.length >> 1)).toBeUndefined();
    expect(findCursor(yaml, yaml.length)?.path ?? []).toEqual([]);
  },
);

property.prop([fc.string({ unit: fc.constantFrom(..."-:{}[],|>&*!#'\"\t \nabé\r") }), fc.nat()])(
  "in any letters at all, asking never fails",
  (yaml, anywhere) => {
    const at = anywhere % (yaml.length + 1);
    const cursor = findCursor(yaml, at);
    if (cursor) expect(yaml.slice(0, at).endsWith(cursor.typed)).toBe(true);
    findWordAt(yaml, at);
  },
);

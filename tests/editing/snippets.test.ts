/** The snippets for Visual Studio Code, read as its documentation says it reads them. */
import { fc, test } from "@fast-check/vitest";
import { describe, expect } from "vitest";
import { parseText, textParser } from "../../src/archive/parse-text.ts";
import { commonSnippets, namingSnippets } from "../../src/editing/snippets.ts";
import { readArchiveFiles } from "../../src/reader/read-archive-files.ts";
import { recordKinds } from "../../src/records/kinds.ts";
import { readAs } from "../../src/records/read.ts";
import { filesOf } from "../support/files-in-memory.ts";

interface Snippet {
  readonly prefix: string;
  readonly scope: string;
  readonly body: readonly string[];
  readonly description: string;
}

type Snippets = Readonly<Record<string, Snippet>>;
const common = JSON.parse(commonSnippets()) as Snippets;

function archiveOf(texts: Readonly<Record<string, string>>) {
  const { archive } = readArchiveFiles(filesOf(texts), { builtInMaterials: [], texts: textParser });
  if (!archive) throw new Error("No archive was read");
  return archive;
}

/** What a snippet writes where everybody takes the first choice, and the choices at each place. */
function expand({ body }: Snippet, filling: string) {
  const choices: string[][] = [];
  const text = body
    .join("\n")
    .replace(
      /\\([\\$}])|\$\{\d+\|((?:[^\\|]|\\.)*)\|\}|\$(\d+)/gu,
      (_, escaped: string | undefined, list: string | undefined) => {
        if (escaped !== undefined) return escaped;
        if (list === undefined) return filling;
        const words = [...list.matchAll(/(?:[^\\,]|\\.)+/gu)].map(([word]) =>
          word.replace(/\\([\\,|])/gu, "$1"),
        );
        choices.push(words);
        return words[0] ?? "";
      },
    );
  return { text, choices };
}

test("those that hold for every archive are those of this repository too", async () => {
  await expect(commonSnippets()).toMatchFileSnapshot("../../.vscode/tilebook.code-snippets");
});

describe("a new record", () => {
  test.each(
    recordKinds.filter(({ name }) => name !== "studio").map((kind) => [kind.name, kind] as const),
  )("of a %s begins with what it needs, and once that is filled in it is read", (name, kind) => {
    const snippet = common[`a ${name}`];
    if (!snippet) throw new Error("There is none");
    const { text } = expand(snippet, "5");
    const { source, faults } = parseText(text, "markdown");
    expect(faults).toEqual([]);
    expect(readAs(kind.schema, source ?? {}), text).toMatchObject({ ok: true });
  });
});

test("each field is one or a few lines of YAML, and is explained", () => {
  for (const [name, snippet] of Object.entries(common).filter(([name]) => name.includes(":"))) {
    const { text } = expand(snippet, "5");
    expect(parseText(`---\n${text}\n---\n`, "markdown").faults, name).toEqual([]);
    expect(snippet.description, name).toMatch(/^(?:In .+ of a|Of a) [a-z]+: \S/u);
    expect(text.startsWith(`${snippet.prefix}:`), name).toBe(true);
  }
});

test("a field that names something offers what the archive has, makers by their keys alone", () => {
  const archive = archiveOf({
    "studio.yaml": 'format: 1\nstudio: X\nmakers: {m07: {name: Robin Clay}, "a: b": {}}\n',
    "recipes/clays/buff.md": "---\nname: Buff\n---\n",
    "recipes/glazes/soot.md": "---\nname: Soot\nkind: glaze\nbought: {maker: Oxbow}\n---\n",
    "tiles/T-1.md": "---\nlayers: [{glaze: soot}]\n---\n",
  });
  const text = namingSnippets(archive);
  const snippets = JSON.parse(text) as Snippets;
  expect(snippets["tile: clay"]?.body).toEqual([`clay: ${"$"}{1|buff|}`]);
  expect(snippets["tile: maker"]?.body).toEqual([`maker: ${"$"}{1|m07|}`]);
  expect(snippets["tile: layers › fired"]?.body).toEqual([
    `fired: ${"$"}{1|bisque,glaze,onglaze,once,raku|}`,
  ]);
  expect(text).not.toContain("Robin");
  expect(Object.keys(snippets).filter((name) => name in common)).toEqual([]);
});

const letter = fc.constantFrom(..."ab,|\\}$é 7.:#-");

test.prop([fc.uniqueArray(fc.string({ minLength: 1, maxLength: 5, unit: letter }))])(
  "whatever makers are called, each choice reads back as one of them, and as itself in YAML",
  (keys) => {
    const archive = archiveOf({
      "studio.yaml": JSON.stringify({
        format: "1",
        studio: "X",
        makers: Object.fromEntries(keys.map((key) => [key.trim() || "m", { shown: "no" }])),
      }),
      "tiles/T-1.md": "---\nlayers: [{glaze: soot}]\n---\n",
    });
    const snippets = JSON.parse(namingSnippets(archive)) as Snippets;
    const made = snippets["tile: maker"];
    const [choices = []] = made ? expand(made, "x").choices : [];
    for (const word of choices) {
      expect(Object.keys(archive.studio.makers ?? {})).toContain(word);
      expect(parseText(`---\nmaker: ${word}\n---\n`, "markdown").source).toEqual({ maker: word });
    }
  },
);

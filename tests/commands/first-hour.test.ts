/** A new studio's first archive: from nothing to a site, by way of the slips that people make. */
import { cp, readdir, readFile, rename, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { encodePlanted } from "../photos/pictures.ts";
import { writeFolder, writeInto } from "../support/archive-folder.ts";
import { removeFolder } from "../support/remove-folder.ts";
import { type Ended, tilebook } from "./tilebook.ts";

const bought = ["tidewrack", "mist", "soot"].map((id) => [
  `recipes/glazes/${id}.md`,
  `---\nname: ${id}\nkind: glaze\nbought: {maker: Oxbow, range: Meadow, colour: ${id}}\ncones: 5-6\n---\n`,
]);

/** An ordinary clear, and the same with a stain, in the words that stand on the bags. */
const mixed = ["clear", "iron-clear"].map((id, i) => [
  `recipes/glazes/${id}.md`,
  [
    "---",
    `name: Our ${id}`,
    "kind: glaze",
    "cones: 5-6",
    "ingredients:",
    "  - {material: nepheline-syenite, parts: 30}",
    "  - {material: flint, parts: 28}",
    "  - {material: wollastonite, parts: 18,5}",
    "  - {material: china-clay, parts: 10}",
    "  - {material: gillespie-borate, parts: 13.5}",
    ...(i === 1 ? ["additions:", "  - {material: iron-oxide-red, parts: 2}"] : []),
    "---",
  ].join("\n"),
]);

const codes = Array.from({ length: 15 }, (_, i) => `AU-${String(i + 1).padStart(3, "0")}`);

const tiles = codes.map((code, i) => [
  `tiles/autumn/${code}.md`,
  [
    "---",
    "glazed: 2026-10-05",
    "layers:",
    "  - fired: bisque",
    `  - {glaze: ${["tidewrack", "mist", "soot", "clear", "iron-clear"][i % 5]}, coats:2, by: brush}`,
    "  - fired: g-1012",
    "result: {surface: gloss, faults: none}",
    "---",
  ].join("\n"),
]);

let archive: string;

const inArchive = (...args: readonly string[]) => tilebook(...args, "--archive", archive);

async function edit(file: string, from: RegExp, to: string): Promise<void> {
  const path = join(archive, file);
  await writeFile(path, (await readFile(path, "utf8")).replaceAll(from, to));
}

const problemsIn = ({ out }: Ended) =>
  (
    JSON.parse(out) as {
      problems: { severity: string; code: string; file: string; hint: string }[];
    }
  ).problems;

const errorsNow = async () =>
  problemsIn(await inArchive("check", "--format", "json")).filter(
    ({ severity }) => severity === "error",
  );

beforeAll(async () => {
  const outer = await writeFolder({});
  archive = join(outer, "glaze-tests");
  expect(await tilebook("new-archive", archive)).toMatchObject({ code: 0 });
  const examples = join(archive, "examples");
  await cp(join(examples, "clay.md"), join(archive, "recipes/clays/buff-stoneware.md"));
  await cp(join(examples, "firing.md"), join(archive, "tiles/firings/g-1012.md"));
  await writeInto(archive, {
    "tiles/autumn/set.md": await readFile(join(examples, "set.md")),
    ...Object.fromEntries([...bought, ...mixed, ...tiles]),
  });
  const photograph = await encodePlanted("jpeg");
  // As a phone, a download and a copy of a copy name them.
  const named = (code: string, i: number) =>
    [`${code}.jpg`, `${code.toLowerCase()} (1).jpeg`, `${code.replace("-", " ")}.JPG`][i % 3];
  for (const [i, code] of codes.entries())
    await writeInto(archive, { [`tiles/autumn/${named(code, i)}`]: photograph });
  return () => removeFolder(outer);
});

describe("a studio's first archive", () => {
  test("is told every slip in one run, each with what to write instead", async () => {
    const errors = await errorsNow();
    const told = new Map<string, number>();
    for (const { code, hint } of errors) {
      expect(hint, code).not.toBe("");
      told.set(code, (told.get(code) ?? 0) + 1);
    }
    expect(Object.fromEntries([...told].sort())).toMatchInlineSnapshot(`
      {
        "decimal-comma": 2,
        "no-space-after-colon": 15,
        "picture-of-no-tile": 10,
        "picture-with-place": 15,
      }
    `);
  });

  test("gets its photographs' names and places put right by two commands", async () => {
    expect(await inArchive("check", "--fix", "--yes")).toMatchObject({ code: 1 });
    const files = await readdir(join(archive, "tiles/autumn"));
    expect(files.filter((file) => /\.jpe?g$/iu.test(file)).sort()).toEqual(
      codes.map((code) => expect.stringMatching(new RegExp(`^${code}\\.jpe?g$`, "iu"))),
    );
    expect(await inArchive("scrub")).toMatchObject({ code: 0 });
    const left = new Set((await errorsNow()).map(({ file }) => file));
    expect([...left].filter((file) => /\.jpe?g$/iu.test(file))).toEqual([]);
  });

  test("is whole once the records say what was meant", async () => {
    for (const code of codes) await edit(`tiles/autumn/${code}.md`, /coats:2/gu, "coats: 2");
    for (const id of ["clear", "iron-clear"])
      await edit(`recipes/glazes/${id}.md`, /18,5/gu, "18.5");
    expect(await errorsNow()).toEqual([]);
  });

  test("is published although nobody carries one of its materials, which is told with what to do", async () => {
    const warnings = problemsIn(await inArchive("check", "--format", "json"));
    expect(warnings.filter(({ code }) => code === "unknown-material")).not.toEqual([]);
    expect(await inArchive("build")).toMatchObject({ code: 0 });
    const site = join(archive, "site");
    expect(await readFile(join(site, "glazes/clear.html"), "utf8")).toContain("gillespie-borate");
    for (const code of codes)
      expect(await readFile(join(site, `tiles/${code.toLowerCase()}.html`), "utf8")).toContain(
        code,
      );
  });

  test("and is the same class's site wherever its folder is moved", async () => {
    const moved = `${archive}-on-a-stick`;
    await rename(join(archive, "site"), moved);
    expect(await readFile(join(moved, "index.html"), "utf8")).toContain("AU-001");
  });
});

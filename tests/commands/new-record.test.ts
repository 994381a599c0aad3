/** `tilebook new glaze` and its like: by fields on the command line, and by answers at a terminal. */
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, test, vi } from "vitest";
import { Stopped } from "../../src/asking/prompts.ts";
import { newAnything } from "../../src/commands/new/new-anything.ts";
import { type NewKind, newRecord } from "../../src/commands/new/new-record.ts";
import { type Answer, answering, stop } from "../support/answers.ts";
import { archiveWith, errorsOf } from "./archives.ts";
import { sumsOf } from "./site-files.ts";
import { tilebook } from "./tilebook.ts";

async function written(...args: readonly string[]) {
  const archive = await archiveWith({});
  const before = await sumsOf(archive);
  const ended = await tilebook("new", ...args, "--archive", archive);
  const after = await sumsOf(archive);
  const changed = Object.keys(after).filter((path) => before[path] !== after[path]);
  const texts = changed.map((path) => readFile(join(archive, path), "utf8"));
  return { ...ended, archive, changed, text: (await Promise.all(texts)).join() };
}

describe("from the command line", () => {
  test.each([
    [
      ["glaze", "chalk", "cones=5-6", "name=Chalk", "kind=glaze", "bought={maker: Oxbow}"],
      "recipes/glazes/chalk.md",
      "---\nname: Chalk\nkind: glaze\nbought: {maker: Oxbow}\ncones: 5-6\n---\n",
    ],
    [
      ["firing", "g-9", "kind=glaze", "cone=06", "witness={top: 06}", "--notes", "Slow."],
      "tiles/firings/g-9.md",
      "---\nkind: glaze\ncone: 06\nwitness: {top: 06}\n---\nSlow.\n",
    ],
    [
      ["clay", "dark", "name='Dark: brown'"],
      "recipes/clays/dark.md",
      "---\nname: 'Dark: brown'\n---\n",
    ],
    [
      ["material", "weir-ash", "name=Weir ash", "analysis={SiO2: 60, CaO: 40}"],
      "recipes/materials/weir-ash.md",
      "---\nname: Weir ash\nanalysis: {SiO2: 60, CaO: 40}\n---\n",
    ],
    [
      ["set", "monday", "kind=class", "codes=M-1..M-9", "--name", "Monday"],
      "tiles/monday/set.md",
      "---\nname: Monday\nkind: class\ncodes: M-1..M-9\n---\n",
    ],
  ])("%j is one record, its fields in the order of the reference", async (args, file, record) => {
    const { archive, code, changed, text, err } = await written(...args);
    expect({ code, changed, text: text.replaceAll('"', "'") }).toEqual({
      code: 0,
      changed: [file],
      text: record,
    });
    const lines = text.trimEnd().split("\n");
    const [told, ...rest] = err.split("\n");
    expect(told).toBe(`${file}:`);
    expect(rest.slice(0, lines.length)).toEqual(lines.map((line) => `  ${line}`));
    expect(rest.at(-1)).toBe(`Written: ${file}`);
    expect(await errorsOf(archive)).toMatchObject({ code: 0, errors: [] });
  });

  test("what the checks say of the record is told with it, and no caution is passed over", async () => {
    const { code, err, changed } = await written(
      ...["glaze", "odd", "name=Odd", "kind=glaze", "cones=5-6"],
      "ingredients=[{material: barium-carbonate, parts: 30}, {material: moon-dust, parts: 70}]",
    );
    expect({ code, changed }).toEqual({ code: 0, changed: ["recipes/glazes/odd.md"] });
    expect(err).toContain("recipes/glazes/odd.md:6 warning: There is no material “moon-dust”.");
    expect(err).toContain("nobody is warned of what this material holds");
  });

  test.each([
    [
      ["glaze", "x", "name=X", "kind=glase", "colr=red", "cones"],
      [
        "cones: there is no equals sign. Write a field and its value, as in cones=5-6.",
        "kind: “glase” is not among the choices here. Did you mean “glaze”?",
        "colr: There is no field “colr” here. Choose from: name, kind, bought, ingredients, additions, blend, by, cones, surface, cover, moves, tone, label, leach-tests, stocked, listed, weight-per-coat.",
      ],
    ],
    [
      ["glaze", "x", "name=X", "kind=glaze"],
      [
        "Nothing says where the glaze comes from. Write exactly one of: bought, ingredients, blend.",
        "On the command line a field is written as in “name=Chalk”.",
      ],
    ],
    [
      ["glaze", "x", "name=X", "name=Y", "cones=", "bought={maker: Oxbow"],
      [
        "name=Y: “name” is written twice. Take one of them out.",
        "cones=: nothing is written behind it. Take it out, or say what.",
        "bought={maker: Oxbow: A bracket “{” opens here and is never closed. Put “}” after the last entry.",
      ],
    ],
    [["glaze", "SOOT", "name=X"], "There is a glaze soot already, in recipes/glazes/soot.md."],
    [
      ["clay", "../x", "name=X"],
      "“../x” cannot be the id of a clay: a name may hold letters, digits, “-”, “_” and “.”, and begins with a letter or digit.",
    ],
    [["material", "name=X"], "Say the material's id first, as in “new material river-clay”."],
    [
      ["set", "firings", "name=X"],
      "“firings” cannot be the id of a set: that folder holds the kiln loads.",
    ],
  ])("%j is refused in words, and nothing is written", async (args, words) => {
    const { code, err, changed } = await written(...args);
    const told =
      typeof words === "string"
        ? `Nothing was written. ${words}`
        : ["Nothing was written.", ...words].join("\n");
    expect(err).toBe(told);
    expect({ code, changed }).toEqual({ code: 2, changed: [] });
  });

  test("a record that would bring an error into the archive is not written", async () => {
    const { code, err, changed } = await written(
      ...[
        "firing",
        "g-2",
        "kind=glaze",
        "on=2026-10-21",
        "tiles={top: [EV-1, EV-9]}",
        "log=g-2.csv",
      ],
    );
    expect({ code, changed }).toEqual({ code: 2, changed: [] });
    expect(err).toMatch(/^Nothing was written\.\ntiles\/firings\/g-2\.md:\d+ error: /u);
  });
});

describe("at a terminal", () => {
  async function answer(kind: NewKind | "anything", ...answers: readonly Answer[]) {
    const archive = await archiveWith({});
    const words = vi.spyOn(console, "error").mockImplementation(() => undefined);
    const { prompts, said, left } = answering(...answers);
    const run =
      kind === "anything"
        ? newAnything(archive, prompts)
        : newRecord(kind, [], { archive }, prompts);
    const code = await run.catch((cause: unknown) => cause);
    words.mockRestore();
    const text = (file: string) => readFile(join(archive, file), "utf8");
    return { archive, code, said, left: left(), text };
  }

  test("a recipe is asked for ingredient by ingredient, materials found by search, with its sum so far", async () => {
    const { code, said, left, text } = await answer(
      "anything",
      ...["glaze", "soot", "sea", "Sea", "glaze", "ingredients"],
      ...["FLINT", "thirty", "30", "another", "chalk", "12,5", "another", "potash", "1", "take"],
      ...["that is all", "cones", "5 to nine", "5-9", "surface", "satin", "additions"],
      ...["red iron", "2", "that is all", "nothing", "Made here.", true],
    );
    expect({ code, left }).toEqual({ code: 0, left: 0 });
    expect(said).toContain("There is a glaze soot already, in recipes/glazes/soot.md.");
    expect(said).toContain(
      "“thirty” is not a number of parts. Parts by weight are a number above 0; take the line out where there is none of it.",
    );
    expect(said.filter((words) => words.startsWith("So far"))).toEqual([
      "So far 30 parts.",
      "So far 42.5 parts.",
      "So far 43.5 parts.",
      "So far 42.5 parts.",
      "So far 2 parts.",
    ]);
    expect(await text("recipes/glazes/sea.md")).toBe(
      [
        "---",
        "name: Sea",
        "kind: glaze",
        "ingredients:",
        "  - {material: silica, parts: 30}",
        "  - {material: whiting, parts: '12,5'}",
        "additions:",
        "  - {material: red-iron-oxide, parts: 2}",
        "cones: 5-9",
        "surface: satin",
        "---",
        "Made here.",
        "",
      ]
        .join("\n")
        .replaceAll("'", '"'),
    );
  });

  test("a firing is asked for field by field, maps and lists too", async () => {
    const { code, left, text } = await answer(
      "firing",
      ...["g-7", "glaze", "witness", "top", "6", "", "schedule", "1100", "rate", "150", "nothing"],
      ...["another", "1215", "hold", "15", "nothing", "that is all", "kiln", "Big: old"],
      ...["nothing", "", true],
    );
    expect({ code, left }).toEqual({ code: 0, left: 0 });
    expect(await text("tiles/firings/g-7.md")).toBe(
      [
        "---",
        "kind: glaze",
        'kiln: "Big: old"',
        "witness: {top: 6}",
        "schedule:",
        "  - {to: 1100, rate: 150}",
        "  - {to: 1215, hold: 15}",
        "---",
        "",
      ].join("\n"),
    );
  });

  test("nothing is written where somebody ends the questions, whichever it is", async () => {
    const whole = ["dark", "Dark", "reclaim", "yes", "nothing", "Old."];
    for (let at = 0; at <= whole.length; at += 1) {
      const { archive, code } = await answer("clay", ...whole.slice(0, at), stop);
      expect(code, String(at)).toBeInstanceOf(Stopped);
      expect(Object.keys(await sumsOf(archive))).not.toContain("recipes/clays/dark.md");
    }
  });
});

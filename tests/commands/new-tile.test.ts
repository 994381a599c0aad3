/** `tilebook new tile`: from words on the command line, and from answers at a terminal. */
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, test, vi } from "vitest";
import { newTile } from "../../src/commands/new-tile.ts";
import { archiveWith, errorsOf } from "./archives.ts";
import { sumsOf } from "./site-files.ts";
import { tilebook } from "./tilebook.ts";

const files = {
  "tiles/monday/set.md": "---\nname: Monday\ncodes: M-1..M-3\njars: {1: soot, 2: liner}\n---\n",
  "tiles/monday/M-1.md": "---\nlayers: [{glaze: 1}]\n---\n",
};

async function written(...args: readonly string[]) {
  const archive = await archiveWith(files);
  const before = await sumsOf(archive);
  const ended = await tilebook("new", "tile", "--archive", archive, ...args);
  const after = await sumsOf(archive);
  const fresh = Object.keys(after).filter((path) => !(path in before));
  return {
    archive,
    fresh,
    changed: Object.keys(before).filter((it) => before[it] !== after[it]),
    ...ended,
  };
}

describe("from the command line", () => {
  test("a tile gets the next free code of its set, and what was understood is told", async () => {
    const { archive, code, err, fresh, changed } = await written(
      ...["--set", "monday", "--maker", "M01", "--layers", "1 x2; lin top by dip; wax motif"],
      ...["--notes", "Ran --- a <script>alert(1)</script> little."],
    );
    expect({ code, changed }).toEqual({ code: 0, changed: [] });
    expect(err).toBe(
      [
        "M-2, in monday, by M01:",
        "  1. Soot: 2 coats",
        "  2. Liner: dipped, at the top",
        "  3. Wax resist, on the motif",
        "Written: tiles/monday/M-2.md",
      ].join("\n"),
    );
    expect(fresh).toEqual(["tiles/monday/M-2.md"]);
    expect(await readFile(join(archive, "tiles/monday/M-2.md"), "utf8")).toBe(
      [
        "---",
        "maker: m01",
        "layers:",
        "  - {glaze: 1, coats: 2}",
        "  - {glaze: liner, where: top, by: dip}",
        "  - {resist: wax, where: motif}",
        "---",
        "Ran --- a <script>alert(1)</script> little.",
        "",
      ].join("\n"),
    );
    expect(await errorsOf(archive)).toMatchObject({ code: 0, errors: [] });
  });

  test.each([
    [
      ["--set", "monday", "--layers", "1 x2; 9; lin tpo"],
      [
        "Nothing was written.",
        "  1 x2; 9; lin tpo",
        "        ^",
        "There is no jar and no glaze “9”. Write the number of a jar (1, 2), the glaze's id, or the first letters of its name.",
        "  1 x2; 9; lin tpo",
        "               ^^^",
        "“tpo” is not understood here. Did you mean “top”?",
      ],
    ],
    [
      ["--set", "monday", "--code", "m-1", "--maker", "Wren Ashdown", "--layers", "1"],
      [
        "Nothing was written.",
        "“m-1” is taken: it is on tiles/monday/M-1.md. Look at the clay again, or write another code.",
        "There is no maker “Wren Ashdown”. Did you mean “m01”?",
      ],
    ],
    [
      ["--code", "../x", "--layers", " "],
      [
        "Nothing was written.",
        "“../x” cannot be a code: a name may hold letters, digits, “-”, “_” and “.”, and begins with a letter or digit. Write another code.",
        "No layer is written yet. Write what was put on first, such as “7 x2”.",
      ],
    ],
    [
      ["--code", "X-1", "--layers", "soot", "--notes", "turned \u202e around"],
      [
        "Nothing was written.",
        "A sign that cannot be seen (U+202E) turns the letters after it around. Delete what is around it and type it again, or look at the file in an editor that shows such signs.",
      ],
    ],
    [
      ["--layers", "soot"],
      ["Say the tile's code with --code: a tile in no set has none kept for it."],
    ],
    [
      ["--set", "mondy", "--layers", "1"],
      ["There is no set “mondy” in this archive. Did you mean “monday”?"],
    ],
    [
      ["--set", "monday"],
      [
        'Say the layers with --layers, since nobody is here to be asked: the lowest first, as in --layers "7 x2; 3 x1 top".',
      ],
    ],
  ])("%s is refused in words, and nothing is written", async (args, words) => {
    const { code, err, fresh, changed } = await written(...args);
    expect(err).toBe(words.join("\n"));
    expect({ code, fresh, changed }).toEqual({ code: 2, fresh: [], changed: [] });
  });

  test("what is meant for a blend is refused, not passed over", async () => {
    const { code, fresh } = await written("--dry-run", "--set", "monday", "--layers", "1");
    expect({ code, fresh }).toEqual({ code: 2, fresh: [] });
  });
});

describe("at a terminal", () => {
  async function answer(...answers: readonly string[]) {
    const archive = await archiveWith(files);
    const said = vi.spyOn(console, "error").mockImplementation(() => undefined);
    const asked: string[] = [];
    const left = [...answers];
    const code = await newTile({ archive }, async (question) => {
      asked.push(question);
      return left.shift() ?? "";
    });
    const told = said.mock.calls.map(([words]) => String(words));
    said.mockRestore();
    return { archive, code, asked, told };
  }

  test("it asks for one thing after the other, and for the layers until every word is understood", async () => {
    const { archive, asked, told } = await answer(
      "monday",
      "",
      "m01",
      "1 x2; so tpo",
      "1 x2; so top",
      "Ran.",
      "y",
    );
    expect(asked).toEqual([
      "Its set (evening, hidden, monday; none if left empty)?",
      "Its code (M-2 if left empty)?",
      "The maker's key, if known?",
      "Its layers, the lowest first, as in “7 x2; 3 x1 top; wax motif”?",
      "Its layers, the lowest first, as in “7 x2; 3 x1 top; wax motif”?",
      "Notes?",
      "Do it? (y/n)",
    ]);
    expect(told).toEqual([
      "  1 x2; so tpo\n           ^^^\n“tpo” is not understood here. Did you mean “top”?",
      "M-2, in monday, by m01:\n  1. Soot: 2 coats\n  2. Soot: at the top",
      "Written: tiles/monday/M-2.md",
    ]);
    expect(await readFile(join(archive, "tiles/monday/M-2.md"), "utf8")).toContain("Ran.\n");
  });

  test("it writes nothing where the answer is no", async () => {
    const { archive, code } = await answer("", "X-9", "", "soot", "", "n");
    expect(code).toBe(0);
    expect(Object.keys(await sumsOf(archive))).not.toContain("tiles/X-9.md");
  });
});

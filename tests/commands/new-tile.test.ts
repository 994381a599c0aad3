/** `tilebook new tile`: from words on the command line, and from answers at a terminal. */
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, test, vi } from "vitest";
import { Stopped } from "../../src/asking/prompts.ts";
import { newTile } from "../../src/commands/new/new-tile.ts";
import { type Answer, answering, stop } from "../support/answers.ts";
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
  async function answer(...answers: readonly Answer[]) {
    const archive = await archiveWith(files);
    const words = vi.spyOn(console, "error").mockImplementation(() => undefined);
    const { prompts, said, left } = answering(...answers);
    const ended = newTile({ archive }, prompts);
    const code = await ended.catch((cause: unknown) => cause);
    const told = words.mock.calls.map(([line]) => String(line));
    words.mockRestore();
    return { archive, code, said, told, left: left() };
  }

  test("it asks for one thing after the other, finds glazes by number or name, and tells each layer back", async () => {
    const { archive, code, said, told, left } = await answer(
      ...["monday", "", "wren"],
      ...["glazed", "2026-10-32", "2026-10-14", "nothing"],
      // A jar by its number, with coats and where it went.
      ...["1", "two", "2", "leave", "top", "rim", "nothing else", "nothing more"],
      // A glaze by its name, in any case, with one thing more.
      ...["LINER", "", "dip", "", "seconds", "3", "nothing"],
      ...["soot", "1", "leave", "", "nothing", "take the last"],
      ...["a resist", "wax", "motif", "nothing else", "nothing more"],
      ...["short form", "fired bisque; so tpo", "fired bisque; so top"],
      ...["that is all", "Ran.", true],
    );
    expect({ code, left }).toEqual({ code: 0, left: 0 });
    const record = [
      "---",
      "glazed: 2026-10-14",
      "maker: m01",
      "layers:",
      "  - {glaze: 1, coats: 2, where: [top, rim]}",
      "  - {glaze: 2, by: dip, seconds: 3}",
      "  - {resist: wax, where: motif}",
      "  - {fired: bisque}",
      "  - {glaze: soot, where: top}",
      "---",
    ];
    const all = [
      "1. Soot: 2 coats, at the top and at the rim",
      "2. Liner: dipped, 3 seconds",
      "3. Wax resist, on the motif",
      "4. Bisque firing",
      "5. Soot: at the top",
    ];
    const indented = all.map((line) => `  ${line}`).join("\n");
    expect(said).toEqual([
      "Which set does it belong to?",
      "Its code, as it is on the clay?",
      "Who glazed it?",
      "What else is known?",
      "glazed: The day the first layer went on.",
      "There is no day 2026-10-32 in the calendar. Write year, month and day, as in 2026-10-14.",
      "glazed: The day the first layer went on.",
      "What else is known?",
      "What went on first? A jar's number, a glaze's name, or what else was done.",
      "layer 1, coats: How many coats, one over the other.",
      "“two” is not a number of coats. Write the number alone: 2.",
      "layer 1, coats: How many coats, one over the other.",
      "layer 1, by: How it was put on.",
      "layer 1, where: Which part of the tile: one or a list; all of it if left out.",
      "layer 1, where: top. What else?",
      "layer 1, where: top, rim. What else?",
      "What else is known of layer 1?",
      "1. Soot: 2 coats, at the top and at the rim",
      "What went on next?",
      "layer 2, coats: How many coats, one over the other.",
      "layer 2, by: How it was put on.",
      "layer 2, where: Which part of the tile: one or a list; all of it if left out.",
      "What else is known of layer 2?",
      "layer 2, seconds: How long the tile was held in the glaze, in seconds.",
      "What else is known of layer 2?",
      "1. Soot: 2 coats, at the top and at the rim\n2. Liner: dipped, 3 seconds",
      "What went on next?",
      "layer 3, coats: How many coats, one over the other.",
      "layer 3, by: How it was put on.",
      "layer 3, where: Which part of the tile: one or a list; all of it if left out.",
      "What else is known of layer 3?",
      "1. Soot: 2 coats, at the top and at the rim\n2. Liner: dipped, 3 seconds\n3. Soot: 1 coat",
      "What went on next?",
      "1. Soot: 2 coats, at the top and at the rim\n2. Liner: dipped, 3 seconds",
      "What went on next?",
      "layer 3, resist: What keeps the next coats off.",
      "layer 3, where: Which part of the tile: one or a list; all of it if left out.",
      "layer 3, where: motif. What else?",
      "What else is known of layer 3?",
      "1. Soot: 2 coats, at the top and at the rim\n2. Liner: dipped, 3 seconds\n3. Wax resist, on the motif",
      "What went on next?",
      "The layers, the lowest first, as in “7 x2; 3 x1 top; wax motif”?",
      "“tpo” is not understood here. Did you mean “top”?",
      "The layers, the lowest first, as in “7 x2; 3 x1 top; wax motif”?",
      "1. Soot: 2 coats, at the top and at the rim\n2. Liner: dipped, 3 seconds\n3. Wax resist, on the motif\n4. Bisque firing\n5. Soot: at the top",
      "What went on next?",
      "Notes?",
      ["tiles/monday/M-2.md will say:", ...record, "Ran."].join("\n"),
      `M-2, in monday, by m01:\n${indented}`,
      "Write it?",
    ]);
    expect(told).toEqual(["Written: tiles/monday/M-2.md"]);
    const text = await readFile(join(archive, "tiles/monday/M-2.md"), "utf8");
    expect(text).toBe([...record, "Ran.", ""].join("\n"));
    expect(await errorsOf(archive)).toMatchObject({ code: 0, errors: [] });
  });

  test("what the set gives is told, and may be said otherwise of this tile", async () => {
    const { archive, said } = await answer(
      ...["evening", "EV-9", "not known", "clay", "buff", "texture", "ribbed", "nothing"],
      ...["7", "", "leave", "", "nothing", "that is all", "", true],
    );
    expect(said[3]).toBe("From the set: clay buff.");
    const text = await readFile(join(archive, "tiles/evening/EV-9.md"), "utf8");
    expect(text).toBe("---\nclay: buff\ntexture: ribbed\nlayers:\n  - {glaze: 7}\n---\n");
  });

  const untilTheEnd = ["no set", "X-9", "not known", "nothing"] as const;
  const aLayer = ["soot", "", "leave", "", "nothing", "that is all", ""] as const;

  test("nothing is written where the answer is no", async () => {
    const { archive, code, told } = await answer(...untilTheEnd, ...aLayer, false);
    expect({ code, told }).toEqual({ code: 0, told: ["Nothing was written."] });
    expect(Object.keys(await sumsOf(archive))).not.toContain("tiles/X-9.md");
  });

  test("nothing is written where somebody ends the questions, whichever it is", async () => {
    const whole = [...untilTheEnd, ...aLayer];
    for (let at = 0; at <= whole.length; at += 1) {
      const { archive, code } = await answer(...whole.slice(0, at), stop);
      expect(code, String(at)).toBeInstanceOf(Stopped);
      expect(Object.keys(await sumsOf(archive))).not.toContain("tiles/X-9.md");
    }
  });
});

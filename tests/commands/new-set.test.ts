import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, test, vi } from "vitest";
import { type NewSetOptions, newSet } from "../../src/commands/new/new-set.ts";
import type { Files } from "../support/archive-folder.ts";
import { archiveWith, errorsOf } from "./archives.ts";
import { sumsOf } from "./site-files.ts";
import { tilebook } from "./tilebook.ts";

const files: Files = {
  "recipes/glazes/gone.md":
    "---\nname: Gone\nkind: glaze\nbought: {maker: Oxbow}\nstocked: no\n---\n",
  "tiles/evening/set.md": [
    "---",
    "name: Evening class, autumn 2026",
    "kind: class",
    "teacher: m01",
    "begins: 2026-09-29",
    "ends: 2026-12-08",
    "codes: EV-1..EV-20",
    "control: EV-1",
    "jars: {06: gone, 7: soot}",
    "defaults: {clay: buff, glazed: 2026-10-14, shape: pot}",
    "---",
    "What we found.",
  ].join("\n"),
  "tiles/hidden/HID-2.md": "---\nmaker: m01\nlayers: [{glaze: soot}]\n---\n",
  "tiles/EV-25.md": "---\nlayers: [{glaze: soot}]\n---\n",
};

async function termAfter(old: string, ...args: readonly string[]) {
  const archive = await archiveWith(files);
  const ended = await tilebook(
    ...["new", "set", "spring", "--from", old, "--archive", archive, ...args],
  );
  const read = () => readFile(join(archive, "tiles/spring/set.md"), "utf8");
  return { archive, read, ...ended, err: ended.err.replaceAll(archive, "HERE") };
}

const named = ["--name", "Evening class, spring 2027", "--begins", "2027-01-11", "--yes"];

describe("the set of a new term", () => {
  test("has the jars and defaults of the one before, other dates, and the next codes that are free", async () => {
    const { archive, read, code, err, out } = await termAfter("Evening", ...named);
    expect(err.replace(/“[^”]*forget/u, "“TILEBOOK forget")).toMatchInlineSnapshot(`
      "tiles/spring/set.md will say:
        ---
        name: Evening class, spring 2027
        kind: class
        teacher: m01
        begins: 2027-01-11
        codes: EV-26..EV-45
        control: EV-1
        jars: {7: soot, 06: gone}
        defaults: {clay: buff, shape: pot}
        ---

      Its 20 codes, EV-26..EV-45, are nobody else's.
      “glazed” of its defaults was last term's, and is left out.
      Jar 06, Gone, is marked “stocked: no”: take it out if it is gone.
      What tiles/evening/set.md says beneath its fields stays there.

      Nobody has a tile in the new set yet, and no maker is carried over or taken away.
      With tiles in evening alone: m02 (Bram Tolliver), m03 (Hesper Lund).
      With tiles in other sets too: m01 (Wren Ashdown).
      Whoever does not come back can keep the code: the tiles rest on it. “TILEBOOK forget --archive HERE m02” takes a name out.
      Give no old code to somebody new: all old tiles under it would become theirs.
      "
    `);
    expect({ code, out }).toEqual({ code: 0, out: "Written: tiles/spring/set.md" });
    expect(await read()).toBe(
      [
        "---",
        "name: Evening class, spring 2027",
        "kind: class",
        "teacher: m01",
        "begins: 2027-01-11",
        "codes: EV-26..EV-45",
        "control: EV-1",
        "jars: {7: soot, 06: gone}",
        "defaults: {clay: buff, shape: pot}",
        "---",
        "",
      ].join("\n"),
    );
    expect(await errorsOf(archive)).toEqual({ code: 0, errors: [] });
  });

  test("is unlisted where the one before was, under a link that is drawn anew", async () => {
    const links: (string | undefined)[] = [];
    for (const _ of [1, 2]) {
      const { read } = await termAfter("hidden", ...named);
      links.push(/link: (\S+)/u.exec(await read())?.[1]);
    }
    expect(links).toEqual([expect.stringMatching(/^[a-z2-7]{26}$/u), expect.any(String)]);
    expect(new Set([...links, "k7wq2mzt4hx3vb5nrd6yfp2cja"]).size).toBe(3);
  });

  test("reserves no codes where the one before did not, and that is told", async () => {
    const { err, read } = await termAfter("hidden", ...named);
    expect(err).toContain("hidden reserves no codes, and so the new set reserves none either.");
    expect(await read()).not.toContain("codes");
  });

  test("is asked for where the line leaves it out, and not written where somebody says no", async () => {
    const archive = await archiveWith(files);
    const before = await sumsOf(archive);
    const said = vi.spyOn(console, "error").mockImplementation(() => undefined);
    const asked: string[] = [];
    const answers = ["Evening, spring", "2027-01-11", "", "n"];
    const ask = async (question: string) => answers[asked.push(question) - 1] ?? "";
    const options: NewSetOptions = { archive, from: "evening", yes: false };
    expect(await newSet("spring", options, ask)).toBe(0);
    expect(asked).toEqual([
      "What is it called? Evening class, autumn 2026 was the last.",
      "Its first day, as in 2027-01-11, if known?",
      "Its last day, if known?",
      "Do it? (y/n)",
    ]);
    expect(said.mock.calls.join()).toContain("name: Evening, spring");
    vi.restoreAllMocks();
    expect(await sumsOf(archive)).toEqual(before);
  });

  test.each([
    [["new", "set", "Hidden"], "There is a set hidden already. Nothing was written."],
    [
      ["new", "set", "firings"],
      "“firings” cannot be the name of a set: that folder holds the kiln loads.",
    ],
    [
      ["new", "set", "a/b"],
      "“a/b” cannot be the name of a set: a name may hold letters, digits, “-”, “_” and “.”, and begins with a letter or digit.",
    ],
    [
      ["new", "set", "spring"],
      "Say with --name what people call the new set. Nothing was written.",
    ],
    [
      ["new", "set", "spring", "--name", "S", "--begins", "11.1.2027"],
      "“11.1.2027” is no day: write it as in 2027-01-11. Nothing was written.",
    ],
    [
      ["new", "set", "spring", "--name", "S", "--begins", "2027-02-01", "--ends", "2027-01-01"],
      "It cannot end on 2027-01-01, before it begins. Nothing was written.",
    ],
  ])("is refused in words: %j", async (words, said) => {
    const archive = await archiveWith(files);
    const before = await sumsOf(archive);
    const ended = await tilebook(...words, "--from", "evening", "--archive", archive);
    expect(ended).toMatchObject({ code: 2, err: said });
    expect(await sumsOf(archive)).toEqual(before);
  });

  test("has no option of a blend", async () => {
    const { code, err } = await termAfter("evening", ...named, "--codes", "A-1");
    expect(code).toBe(2);
    expect(err).toContain("error: --codes is for a blend, and this is a set");
  });

  test("cannot follow a set that is not there", async () => {
    expect(await termAfter("evning", ...named)).toMatchObject({
      ...{ code: 2, err: "There is no set “evning” in this archive. Did you mean “evening”?" },
    });
  });
});

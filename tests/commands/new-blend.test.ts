import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, test, vi } from "vitest";
import { type NewBlendOptions, newBlend } from "../../src/commands/new/new-blend.ts";
import { failOn } from "../publish/failing-disk.ts";
import type { Files } from "../support/archive-folder.ts";
import { archiveWith, errorsOf } from "./archives.ts";
import { sumsOf } from "./site-files.ts";
import { tilebook } from "./tilebook.ts";

const mixed = (name: string, ...parts: readonly string[]) =>
  [
    "---",
    `name: ${name}`,
    "kind: glaze",
    "cones: 5-7",
    "ingredients:",
    ...parts.map((part) => `  - {material: ${part.replace(" ", ", parts: ")}}`),
    "---",
  ].join("\n");

const files: Files = {
  "recipes/glazes/ash.md": mixed("Ash", "whiting 30", "potash-feldspar 70"),
  "recipes/glazes/leaden.md": mixed("Leaden", "lead-bisilicate 60", "kaolin 40"),
  "recipes/glazes/Hares.md": "---\nname: Hares\nkind: slip\nbought: {maker: Oxbow}\n---\n",
};

/** A fresh archive, and what the command left in it. */
async function blend(...args: readonly string[]) {
  const archive = await archiveWith(files);
  const ended = await tilebook("new", "--archive", archive, ...args);
  const read = (path: string) => readFile(join(archive, path), "utf8");
  return { archive, read, ...ended };
}

const line = ["--blend", "line", "--of", "liner,ash", "--steps", "4"];

describe("a new line blend", () => {
  test("is written as glazes and tiles of a set of its own", async () => {
    const { code, read, err } = await blend(
      ...line,
      "--codes",
      "LX-08",
      "--set",
      "lx",
      "--clay",
      "buff",
    );
    expect(code).toBe(0);
    expect(err).toBe(
      [
        "9 files written:",
        "  recipes/glazes/liner-3-ash-1.md",
        "  recipes/glazes/liner-2-ash-2.md",
        "  recipes/glazes/liner-1-ash-3.md",
        "  tiles/lx/set.md",
        ...["08", "09", "10", "11", "12"].map((number) => `  tiles/lx/LX-${number}.md`),
        "",
      ].join("\n"),
    );
    expect(await read("recipes/glazes/liner-3-ash-1.md")).toBe(
      [
        "---",
        "name: Liner 3, Ash 1",
        "kind: glaze",
        "blend:",
        "  - {glaze: liner, parts: 3}",
        "  - {glaze: ash, parts: 1}",
        "cones: 5-6",
        "stocked: no",
        "---",
        "",
      ].join("\n"),
    );
    expect(await read("tiles/lx/set.md")).toBe(
      [
        "---",
        "name: Line blend, Liner to Ash",
        "kind: series",
        "codes: LX-08..LX-12",
        "defaults: {clay: buff}",
        "---",
        "",
      ].join("\n"),
    );
    expect(await read("tiles/lx/LX-08.md")).toBe("---\nlayers:\n  - {glaze: liner}\n---\n");
    expect(await read("tiles/lx/LX-12.md")).toBe("---\nlayers:\n  - {glaze: ash}\n---\n");
  });

  test("is sound, and has chemistry", async () => {
    const { archive } = await blend(...line, "--codes", "LX-1", "--set", "lx", "--clay", "buff");
    const { out } = await tilebook("check", "--archive", archive, "--format", "json");
    const about = (JSON.parse(out) as { problems: { file: string }[] }).problems.map((p) => p.file);
    expect(about.filter((file) => /liner-|\/lx\//u.test(file))).toEqual([]);
  });

  test("may go into a set that is there, with another clay than its own", async () => {
    const clay: Files = { "recipes/clays/white.md": "---\nname: White\ncones: 5-7\n---\n" };
    const archive = await archiveWith({ ...files, ...clay });
    const args = [...line, "--codes", "EV-41", "--set", "EVENING", "--archive", archive];
    expect((await tilebook("new", ...args, "--clay", "white")).code).toBe(0);
    expect(await readFile(join(archive, "tiles/evening/EV-42.md"), "utf8")).toBe(
      "---\nclay: white\nlayers:\n  - {glaze: liner-3-ash-1}\n---\n",
    );
    expect((await errorsOf(archive)).errors).toEqual([]);
  });

  test("made again on other tiles takes the glazes that are there", async () => {
    const { archive } = await blend(...line, "--codes", "LX-1");
    const again = await tilebook("new", ...line, "--codes", "LY-1", "--archive", archive);
    expect(again.err).toMatch(/^5 files written:\n {2}tiles\/LY-1\.md/u);
    expect((await errorsOf(archive)).errors).toEqual([]);
  });

  test("comes with a weighing sheet on standard output, its boxes to tick", async () => {
    const { out } = await blend(...line, "--codes", "LX-1", "--batch", "60");
    const [head, ends, ...rest] = out.split("\n\n");
    expect(head).toBe("Line blend, Liner to Ash: 5 tiles, 60 g of each by dry weight");
    // Half of 5 × 60 g is Liner: 150 g, and 40 parts in its 100 are feldspar.
    expect(ends).toBe(
      [
        "Liner: 150 g in all, dry",
        "                            grams  together",
        "[ ] Potash feldspar         60.0      60.0",
        "[ ] Silica (quartz, flint)  45.0     105.0",
        "[ ] Whiting                 30.0     135.0",
        "[ ] Kaolin (china clay)     15.0     150.0",
      ].join("\n"),
    );
    expect(rest[1]).toBe(
      [
        "          Liner, g  Ash, g",
        "[ ] LX-1     60.0        –",
        "[ ] LX-2     45.0    15.0",
        "[ ] LX-3     30.0    30.0",
        "[ ] LX-4     15.0    45.0",
        "[ ] LX-5         –   60.0",
      ].join("\n"),
    );
    expect(out).toContain("Caution: Dust of silica");
  });

  test("with lead in it says so before anything is weighed, of every blend that holds it", async () => {
    const { out } = await blend("--blend", "line", "--of", "ash,leaden", "--codes", "LX-1");
    const loud = out.split("\n\n").filter((part) => part.startsWith("CAUTION"));
    expect(loud).toHaveLength(5);
    expect(loud[0]).toMatch(/^CAUTION, Ash 4, Leaden 1: This glaze holds lead/u);
    expect(out.indexOf("CAUTION, Leaden")).toBeLessThan(out.indexOf("[ ]"));
  });

  test("of jars is measured by volume", async () => {
    const of = ["--blend", "line", "--of", "hares,SOOT", "--by", "volume"];
    const { code, out, read } = await blend(...of, "--steps", "3", "--codes", "LX-1");
    expect(code).toBe(0);
    expect(out).toContain("[ ] Hares: 200 ml in all, stirred and sieved");
    expect(out).toContain("Hares, ml");
    const record = await read("recipes/glazes/Hares-2-soot-1.md");
    expect(record).toContain("\nby: volume\n");
    expect(record).not.toContain("cones");
  });

  test("writes nothing on a dry run, and tells what it would", async () => {
    const { archive, err, out } = await blend(...line, "--codes", "LX-1", "--dry-run");
    expect(err).toMatch(/^8 files would be written:/u);
    expect(out).toContain("[ ] LX-5");
    expect(await readdir(join(archive, "recipes/glazes"))).toHaveLength(5);
    expect(await readdir(join(archive, "tiles"))).toEqual(["evening", "firings", "hidden"]);
  });
});

test("a new triaxial blend is laid out row by row, and is sound", async () => {
  const args = ["--blend", "triaxial", "--of", "liner,ash,leaden", "--steps", "3"];
  const { archive, code, read } = await blend(...args, "--codes", "T-1..T-10", "--set", "three");
  expect(code).toBe(0);
  expect(await read("tiles/three/T-5.md")).toContain("{glaze: liner-1-ash-1-leaden-1}");
  expect(await read("tiles/three/T-7.md")).toContain("{glaze: ash}");
  expect(await read("tiles/three/T-10.md")).toContain("{glaze: leaden}");
  expect((await errorsOf(archive)).errors).toEqual([]);
});

describe("a new blend is refused, and nothing written,", () => {
  const taken: Files = {
    "tiles/odd/set.md": "---\nname: Odd\ncodes: OD-1..OD-9\n---\n",
    "tiles/odd/OD-3.md": "---\nlayers: [{glaze: soot, coats: lots}]\n---\n",
    "recipes/glazes/liner-2-ash-2.md": mixed("Another", "whiting 100"),
  };
  test.each([
    [["--of", "liner"], "A line blend lies between 2 glazes, and here are 1."],
    [["--of", "liner,Liner"], "One glaze cannot be two ends of a blend."],
    [["--of", "liner,asch"], "There is no glaze “asch” in this archive. Did you mean “ash”?"],
    [
      ["--of", "liner,soot"],
      "Soot was bought, and only its maker knows what is in it. Only glazes mixed of known materials are blended by dry weight: add --by volume to measure it by the jar.",
    ],
    [
      ["--codes", "EV-1"],
      "“EV-1” cannot be the code of a new tile: it is on tiles/evening/EV-1.md.",
    ],
    [
      ["--codes", "OLD-1"],
      "“OLD-1” cannot be the code of a new tile: it was on EV-1 before, and leads on to it.",
    ],
    [["--codes", "OD-5"], "“OD-5” cannot be the code of a new tile: it is kept for the set odd."],
    [
      ["--codes", "OD-3", "--set", "odd"],
      "“OD-3” cannot be the code of a new tile: it is on tiles/odd/OD-3.md. The next free code of the set's block is OD-1.",
    ],
    [["--codes", "LX"], "Tiles are counted on from a code that ends in a number, as in LB-1."],
    [["--codes", "LX-1..LX-5"], "4 tiles are to be written: LX-1..LX-4 would fit."],
    [
      ["--set", "firings"],
      "“firings” cannot be the name of a set: that folder holds the kiln loads.",
    ],
    [
      ["--set", "a/b"],
      "“a/b” cannot be the name of a set: a name may hold letters, digits, “-”, “_” and “.”, and begins with a letter or digit.",
    ],
    [["--clay", "bluff"], "There is no clay “bluff” in this archive. Did you mean “buff”?"],
    [
      ["--steps", "4"],
      "recipes/glazes/liner-2-ash-2.md is there already and is another glaze. Give that one another name, and nothing was written.",
    ],
  ] as const)("with %j", async (args, said) => {
    const archive = await archiveWith({ ...files, ...taken });
    const usual = ["--blend", "line", "--of", "liner,ash", "--codes", "LX-1", "--steps", "3"];
    const { code, out, err } = await tilebook("new", ...usual, ...args, "--archive", archive);
    expect({ code, out, err }).toEqual({ code: 2, out: "", err: said });
    expect(await readdir(join(archive, "tiles"))).toEqual(["evening", "firings", "hidden", "odd"]);
  });

  test.each([
    ["--steps", "2"],
    ["--steps", "3.5"],
    ["--batch", "0"],
    ["--blend", "square"],
  ])("with %s %s", async (...args) => {
    expect((await blend(...line, "--codes", "LX-1", ...args)).code).toBe(2);
  });

  test("where a set cannot be read", async () => {
    const archive = await archiveWith({ ...files, "tiles/odd/set.md": "---\nnom: Odd\n---\n" });
    const { code, err } = await tilebook("new", ...line, "--codes", "LX-1", "--archive", archive);
    expect(code).toBe(1);
    expect(err).toContain("tiles/odd/set.md");
  });
});

describe("what the command line leaves out", () => {
  const options = async (): Promise<NewBlendOptions> => ({
    archive: await archiveWith(files),
    blend: "line",
    by: "weight",
    steps: 3,
    batch: 100,
    dryRun: true,
  });

  test("is asked for where somebody sits at a terminal", async () => {
    const asked: string[] = [];
    const answers = ["liner, ash", "LX-1"];
    vi.spyOn(console, "log").mockImplementation(() => undefined);
    vi.spyOn(console, "error").mockImplementation(() => undefined);
    const ask = async (question: string) => answers[asked.push(question) - 1] ?? "";
    expect(await newBlend(await options(), ask)).toBe(0);
    expect(asked).toEqual([
      "The ids of the 2 glazes at its ends, with commas between them?",
      "The first tile's code?",
    ]);
  });

  test("is named where nobody does", async () => {
    await expect(newBlend(await options(), undefined)).rejects.toThrow(
      "Say it with --of, since nobody is here to be asked",
    );
    await expect(
      newBlend({ ...(await options()), of: ["liner", "ash"] }, undefined),
    ).rejects.toThrow("Say it with --codes");
  });
});

test("a disk that fills up while a blend is written leaves nothing of it", async () => {
  const archive = await archiveWith(files);
  const before = await sumsOf(archive);
  for (const call of ["link", "copyFile"] as const)
    failOn(call, "ENOSPC", ([, to]) => to.endsWith("LX-10.md"));
  const args = [...line, "--codes", "LX-08", "--set", "lx"];
  const { code, err } = await tilebook("new", "--archive", archive, ...args);
  expect({ code, err }).toMatchObject({
    code: 3,
    err: expect.stringContaining("The disk is full."),
  });
  expect(without(await sumsOf(archive), ".cache/")).toEqual(without(before, ".cache/"));
  expect(await readdir(join(archive, "tiles"))).not.toContain("lx");
});

function without<T>(sums: Readonly<Record<string, T>>, prefix: string) {
  return Object.fromEntries(Object.entries(sums).filter(([file]) => !file.startsWith(prefix)));
}

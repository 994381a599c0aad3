import { afterEach, describe, expect, test, vi } from "vitest";
import { main } from "../../src/cli.ts";
import { type Files, soundFiles, writeFolder } from "../support/archive-folder.ts";
import { removeFolder } from "../support/remove-folder.ts";

const folders: string[] = [];

afterEach(async () => {
  vi.restoreAllMocks();
  await Promise.all(folders.splice(0).map(removeFolder));
});

async function check(files: Files) {
  const folder = await writeFolder(files);
  folders.push(folder);
  const said = vi.spyOn(console, "log").mockImplementation(() => undefined);
  vi.spyOn(console, "error").mockImplementation(() => undefined);
  const code = await main(["check", "--archive", folder, "--format", "json"]);
  return { code, report: JSON.parse(String(said.mock.calls[0]?.[0])) };
}

describe("tilebook check", () => {
  test("finds nothing but practice notes in a sound archive, and counts it", async () => {
    const { code, report } = await check(await soundFiles());
    expect(code).toBe(0);
    expect(
      report.problems.map(({ severity, code: rule, file }: never) => [severity, rule, file]),
    ).toEqual([["warning", "light-over-dark", "tiles/hidden/HID-1.md"]]);
    expect(report.counts).toMatchObject({ tiles: 4, sets: 2, firings: 1, glazes: 2, clays: 1 });
  });

  test("tells every fault of the whole archive in one run, each on its line", async () => {
    const sound = await soundFiles();
    const { code, report } = await check({
      ...sound,
      "tiles/evening/EV-4.md": [
        "---",
        "glazed: 2026-13-01",
        "clay: buf",
        "layers:",
        "  - {glaze: sott, coats: 2}",
        "  - {glaze: soot, resist: wax}",
        "  - coats: 2",
        "cone: 6",
        "---",
      ].join("\n"),
      "tiles/evening/EV-5.md": "---\nlayers:\n  - {glaze: soot}\nresult: {surface: satn}\n---\n",
      "recipes/glazes/liner.md":
        "---\nname: Liner\nkind: glaze\ncones: 66\nbought: {maker: Oxbow}\n---\n",
    });
    expect(code).toBe(1);
    const errors = report.problems.filter(({ severity }: never) => severity === "error");
    expect(
      errors.map(
        ({ file, line, column, code: rule }: never) => `${file}:${line}:${column} ${rule}`,
      ),
    ).toEqual([
      "recipes/glazes/liner.md:4:8 unknown-cone",
      "tiles/evening/EV-4.md:2:9 not-a-day",
      "tiles/evening/EV-4.md:3:7 unknown-clay",
      "tiles/evening/EV-4.md:5:13 unknown-glaze",
      "tiles/evening/EV-4.md:6:5 step-with-two-keys",
      "tiles/evening/EV-4.md:7:5 step-without-key",
      "tiles/evening/EV-4.md:8:1 unknown-field",
      "tiles/evening/EV-5.md:4:19 unknown-choice",
    ]);
  });

  test("tells a firing that nobody wrote down once, and nothing of heat that nobody knows", async () => {
    const sound = await soundFiles();
    const codes = Array.from({ length: 15 }, (_, i) => `FO-${i + 1}`);
    const files = Object.fromEntries(
      codes.flatMap((code) => [
        [
          `tiles/evening/${code}.md`,
          `---\nlayers:\n  - fired: b-1\n  - {glaze: soot, coats: 2}\n  - fired: g-9\nresult: {after: g-9, surface: gloss}\n---\n`,
        ],
        [`tiles/evening/${code}.jpg`, sound["tiles/evening/EV-1.jpg"] ?? ""],
      ]),
    );
    const { report } = await check({
      ...sound,
      ...files,
      "tiles/firings/b-1.md": "---\non: 2026-10-01\nkind: bisque\ncone: 06\n---\n",
    });
    const about = report.problems.filter(({ file }: never) => String(file).includes("/FO-"));
    expect(new Set(about.map(({ code: rule }: never) => rule))).toEqual(
      new Set(["unknown-firing"]),
    );
    expect(about).toHaveLength(15);
  });

  test("exits with 2 and tells what there is where the words are wrong", async () => {
    vi.spyOn(process.stderr, "write").mockImplementation(() => true);
    expect(await main(["chekc"])).toBe(2);
    expect(await main(["check", "--formt", "json"])).toBe(2);
    expect(await main(["check", "--format", "yaml"])).toBe(2);
  });
});

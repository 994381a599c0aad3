/** `check --fix`: shows, asks, mends what is sure, and tells what is left. */
import { existsSync, readFileSync } from "node:fs";
import { cp, readdir, rename } from "node:fs/promises";
import { join } from "node:path";
import { afterEach, describe, expect, test, vi } from "vitest";
import { check } from "../../src/commands/check/check.ts";
import { mendInRounds } from "../../src/commands/check/mend.ts";
import type { Problem } from "../../src/records/problem.ts";
import { archiveWith } from "./archives.ts";
import { tilebook } from "./tilebook.ts";

async function archiveWithYml(): Promise<string> {
  const archive = await archiveWith({});
  await rename(join(archive, "studio.yaml"), join(archive, "studio.yml"));
  return archive;
}

afterEach(() => vi.restoreAllMocks());

describe("tilebook check --fix", () => {
  test("with --yes shows what it does, does it, and reports the archive as it is then", async () => {
    const archive = await archiveWithYml();
    const { code, out, err } = await tilebook("check", "--archive", archive, "--fix", "--yes");
    expect(err).toBe("This can be mended:\n  rename studio.yml → studio.yaml\n1 of 1 done.");
    expect(out).not.toContain("no-studio");
    expect(code).toBe(0);
  });

  test("only shows it where nobody can be asked", async () => {
    const archive = await archiveWithYml();
    const { code, out, err } = await tilebook("check", "--archive", archive, "--fix");
    expect(err).toBe(
      "This can be mended:\n  rename studio.yml → studio.yaml\nNothing was changed: add --yes to do it where nobody can be asked.",
    );
    expect(out).toContain(
      `Rename “studio.yml” to “studio.yaml”. “npm run --silent tilebook -- check --fix --archive ${archive}” does this.`,
    );
    expect(code).toBe(1);
    expect(existsSync(join(archive, "studio.yml"))).toBe(true);
  });

  test.each([
    ["y", 0],
    ["n", 1],
    ["", 1],
  ])("asks once, and takes “%s” for what it is", async (answer, code) => {
    const archive = await archiveWithYml();
    vi.spyOn(console, "log").mockImplementation(() => undefined);
    vi.spyOn(console, "error").mockImplementation(() => undefined);
    const ask = vi.fn(() => Promise.resolve(answer));
    const options = { archive, format: "text", all: false, fix: true, yes: false } as const;
    expect(await check(options, ask)).toBe(code);
    expect(ask.mock.calls).toEqual([["Do it? (y/n)"]]);
  });

  test("writes a random link into each unlisted set that has none, or one of its own name", async () => {
    const setWith = (line: string) =>
      `---\nname: Quiet class\nlisted: no # hush\n${line}---\nNotes.\n`;
    const archive = await archiveWith({
      "tiles/hidden/set.md": setWith("defaults: {clay: buff}\n"),
      "tiles/quiet/set.md": setWith("link: k7wq2mzt4hx3quiet5nrd6yfp2cja\n"),
    });
    const before = await tilebook("build", "--archive", archive, "--quiet");
    expect(before.code).toBe(1);
    const { code, err } = await tilebook("check", "--archive", archive, "--fix", "--yes");
    expect({ code, err }).toEqual({
      code: 0,
      err: expect.stringMatching(
        /^This can be mended:\n {2}write into tiles\/hidden\/set\.md: link: [a-z2-7]{26}\n {2}write into tiles\/quiet\/set\.md: link: [a-z2-7]{26}\n2 of 2 done\.$/u,
      ),
    });
    const links = ["hidden", "quiet"].map((set) => {
      const text = readFileSync(join(archive, `tiles/${set}/set.md`), "utf8");
      const link = /^link: ([a-z2-7]{26})\n/mu.exec(text)?.[1];
      expect(text.replace(`link: ${link}\n`, "")).toBe(
        setWith(set === "hidden" ? "defaults: {clay: buff}\n" : ""),
      );
      return link;
    });
    expect(links[0]).not.toBe(links[1]);
  });

  test("says so where nothing can be mended without a guess", async () => {
    const archive = await archiveWith({});
    const { code, err } = await tilebook("check", "--archive", archive, "--fix");
    expect({ code, err }).toEqual({ code: 0, err: "Nothing here can be mended without a guess." });
  });

  test("gives fifteen photographs and a record the names that they were meant to have", async () => {
    const archive = await archiveWith({
      ...Object.fromEntries(
        Array.from({ length: 15 }, (_, i) => [
          `tiles/evening/CL-${i + 10}.md`,
          "---\nlayers: [{glaze: soot}]\nresult: {surface: satin}\n---\n",
        ]),
      ),
      "tiles/evening/EV-8.md.txt": "---\nlayers: [{glaze: soot}]\n---\n",
    });
    const folder = join(archive, "tiles/evening");
    for (let i = 10; i < 25; i += 1)
      await cp(join(folder, "EV-1.jpg"), join(folder, i % 2 ? `CL_${i}.JPG` : `cl ${i} (1).jpg`));
    const told = await tilebook("check", "--archive", archive);
    expect(told.code).toBe(1);
    expect(told.out.match(/check --fix/gu)).toHaveLength(2);
    expect(told.out).not.toContain("there is no photograph of it");
    expect(told.out).toContain(
      "The same is wrong in 14 other places: tiles/evening/cl 12 (1).jpg:1,",
    );
    const { code, err, out } = await tilebook("check", "--archive", archive, "--fix", "--yes");
    expect(err).toContain("  rename tiles/evening/cl 10 (1).jpg → tiles/evening/CL-10.jpg\n");
    expect(err).toContain("  rename tiles/evening/EV-8.md.txt → tiles/evening/EV-8.md\n");
    expect(err).toContain("16 of 16 done.");
    expect(code).toBe(0);
    expect(out).toContain("Read 20 tiles, 2 sets, 18 photographs");
    expect((await readdir(folder)).filter((name) => name.startsWith("CL-"))).toHaveLength(30);
  });

  test("goes on to what a mend made sure, asks again for it, and stops where nothing is left", async () => {
    const archive = await archiveWith({
      "tiles/evening/EV-8.md.txt": "---\nlayers: [{glaze: soot}]\nresult: {surface: satin}\n---\n",
    });
    const folder = join(archive, "tiles/evening");
    await cp(join(folder, "EV-1.jpg"), join(folder, "EV 8.jpg"));
    vi.spyOn(console, "log").mockImplementation(() => undefined);
    const said: string[] = [];
    vi.spyOn(console, "error").mockImplementation((words) => void said.push(words));
    const ask = vi.fn(() => Promise.resolve("y"));
    const options = { archive, format: "text", all: false, fix: true, yes: false } as const;
    expect(await check(options, ask)).toBe(0);
    expect(ask).toHaveBeenCalledTimes(2);
    expect(said).toEqual([
      "This can be mended:",
      "  rename tiles/evening/EV-8.md.txt → tiles/evening/EV-8.md",
      "1 of 1 done.",
      "Now this can be mended too:",
      "  rename tiles/evening/EV 8.jpg → tiles/evening/EV-8.jpg",
      "1 of 1 done.",
    ]);
  });

  test("tries no mend twice, though its place is still taken", async () => {
    const archive = await archiveWithYml();
    const rounds: string[] = [];
    vi.spyOn(console, "error").mockImplementation((words) => void rounds.push(words));
    const rename = (from: string, to: string): Problem => ({
      ...{ severity: "error", code: "no-studio", file: from, path: [], message: "", hint: "" },
      mend: { does: "rename", renamings: [{ from, to }] },
    });
    const find = () =>
      Promise.resolve({
        problems: [rename("gone.txt", "gone.md"), rename("studio.yml", "studio.yaml")],
        texts: new Map(),
      });
    await mendInRounds(find, { archive, yes: true, ask: undefined });
    expect(rounds).toEqual([
      "This can be mended:",
      "  rename gone.txt → gone.md\n  rename studio.yml → studio.yaml",
      "Not done: rename gone.txt → gone.md: gone.txt is not there any more.",
      "1 of 2 done.",
    ]);
  });
});

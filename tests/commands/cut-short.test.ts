/** Builds that do not come to their end: the last good site stands, or the next command brings it back. */
import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { chmod, cp, readdir, readFile, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { failOn } from "../publish/failing-disk.ts";
import { soundFiles, writeFolder, writeInto } from "../support/archive-folder.ts";
import { removeFolder } from "../support/remove-folder.ts";
import { folderWith } from "./archives.ts";
import { sumsOf } from "./site-files.ts";
import { ended, program, spawnTilebook, tilebook } from "./tilebook.ts";

let archive: string;
let good: string;
let before: Readonly<Record<string, string>>;

/** A good site, and then an archive of which every page, table and search index is another. */
beforeAll(async () => {
  archive = await writeFolder(await soundFiles());
  good = join(archive, "site");
  const { code } = await tilebook("build", "--archive", archive);
  expect(code).toBe(0);
  before = await sumsOf(good);
  const studio = join(archive, "studio.yaml");
  await writeFile(
    studio,
    (await readFile(studio, "utf8")).replace("Eelgate Pottery", "Eelgate Yard"),
  );
  await writeInto(archive, { "tiles/EX-9.md": "---\nlayers: [{glaze: soot}]\n---\nAnother.\n" });
});

afterAll(() => removeFolder(archive));

/** The good site in a folder of one test's own. */
async function goodSite(): Promise<string> {
  const out = join(await folderWith({}), "site");
  await cp(good, out, { recursive: true });
  return out;
}

async function picturesIn(site: string): Promise<Record<string, string>> {
  return sumsOf(join(site, "pictures"));
}

/** What stands beside a site once a build has come to its end. */
const beside = (out: string) => readdir(dirname(out));

/** Nothing was lost, and the next build goes through. */
async function expectNextBuildToServe(out: string): Promise<void> {
  const { code } = await tilebook("build", "--archive", archive, "--out", out);
  expect(code).toBe(0);
  expect(await readFile(join(out, "index.html"), "utf8")).toContain("Eelgate Yard");
  expect(await beside(out)).toEqual(["site"]);
}

describe("a build that is killed", () => {
  const moments = ["write the data", "write pages", "write pictures and styles", "index the words"];

  /** Ends the program as it says a word: from without, a busy computer's signal may come too late. */
  const killerAt = (moment: string) => `
      const { write } = process.stderr;
      process.stderr.write = function (text, ...rest) {
        const written = write.call(this, text, ...rest);
        if (String(text).includes(${JSON.stringify(moment)})) process.kill(process.pid, "SIGKILL");
        return written;
      };`;

  test("at any moment of its work leaves the last good site as it was", async () => {
    const outs = await Promise.all(moments.map(goodSite));
    const killed = moments.map(async (moment, i) => {
      const out = outs[i] ?? "";
      const child = await spawnTilebook(["build", "--archive", archive, "--out", out], {
        node: ["--import", `data:text/javascript,${encodeURIComponent(killerAt(moment))}`],
      });
      expect(child.code, moment).toBeNull();
      expect(await sumsOf(out), moment).toEqual(before);
    });
    await Promise.all(killed);
    for (const out of outs) await expectNextBuildToServe(out);
  });

  test("between the two renames leaves a site that the next command brings back", async () => {
    const out = await goodSite();
    const killer = `
      import fs from "node:fs";
      import { syncBuiltinESMExports } from "node:module";
      const { rename } = fs.promises;
      fs.promises.rename = async (from, to) => {
        await rename(from, to);
        if (String(to).endsWith("last-0")) process.kill(process.pid, "SIGKILL");
      };
      syncBuiltinESMExports();`;
    const child = await spawnTilebook(["build", "--archive", archive, "--out", out], {
      node: ["--import", `data:text/javascript,${encodeURIComponent(killer)}`],
    });
    expect(child.code).toBeNull();
    expect(existsSync(out)).toBe(false);
    const faulty = await folderWith({ "studio.yaml": "format: 1\n" });
    expect((await tilebook("build", "--archive", faulty, "--out", out)).code).toBe(1);
    expect(await sumsOf(out)).toEqual(before);
    await expectNextBuildToServe(out);
  });
});

describe("a disk that is full", () => {
  test.each([
    ["while a page is written", /\.html$/u],
    ["while data are written", /tiles\.json$/u],
    ["while the search index is written", /pagefind\/fragment/u],
    ["at the very last", /\.tilebook\.json$/u],
  ])("%s is told of, and the last good site stands", async (_, file) => {
    const out = await goodSite();
    failOn("writeFile", "ENOSPC", ([path]) => file.test(path.replaceAll("\\\\", "/")));
    const { code, err } = await tilebook("build", "--archive", archive, "--out", out);
    expect(err).toContain("The disk is full. Make room and run the command again");
    expect(code).toBe(3);
    expect(await sumsOf(out)).toEqual(before);
    expect(await beside(out)).toEqual(["site"]);
  });

  test("while pictures are remembered is told of, and what is remembered stays sound", async () => {
    const out = await goodSite();
    const args = ["--archive", archive, "--out", out, "--cache", join(dirname(out), "cache")];
    let written = 0;
    failOn("writeFile", "ENOSPC", ([path]) => path.includes("pictures") && ++written === 20);
    const { code, err } = await tilebook("build", ...args);
    expect(err).toContain("The disk is full.");
    expect(code).toBe(3);
    expect(await sumsOf(out)).toEqual(before);
    expect((await tilebook("build", ...args)).code).toBe(0);
    expect(await picturesIn(out)).toEqual(await picturesIn(good));
  });

  test.skipIf(process.platform === "win32")(
    "or an account's limit, met by the system itself, is told of, and the last good site stands",
    async () => {
      const out = await goodSite();
      const limited = ["-c", 'ulimit -f 40 && exec "$@"', "sh", process.execPath, program];
      const args = ["build", "--archive", archive, "--out", out, "--quiet"];
      const { code, err } = await ended(spawn("sh", [...limited, ...args]));
      expect(err).toContain("A file grew larger than this account may write.");
      expect(code).toBe(3);
      expect(await sumsOf(out)).toEqual(before);
      expect(await beside(out)).toEqual(["site"]);
    },
  );
});

describe("a folder that may not be written to", () => {
  const isRoot = process.getuid?.() === 0;
  const nobody = 65_534;

  test.skipIf(process.platform === "win32")(
    "is told of, and the last good site stands",
    async () => {
      const out = await goodSite();
      const cache = await folderWith({});
      await Promise.all([chmod(cache, 0o777), chmod(archive, 0o755), chmod(dirname(out), 0o555)]);
      const { code, err } = await spawnTilebook(
        ["build", "--archive", archive, "--out", out, "--cache", cache, "--quiet"],
        isRoot ? { uid: nobody, env: { HOME: cache } } : {},
      );
      await chmod(dirname(out), 0o755);
      expect(err).toContain("This computer does not allow it.");
      expect(code).toBe(3);
      expect(await sumsOf(out)).toEqual(before);
      expect(await beside(out)).toEqual(["site"]);
    },
  );

  test("by a fault of the system while the folders change places is told of", async () => {
    const out = await goodSite();
    failOn("rename", "EBUSY", ([, to]) => to === out);
    const { code, err } = await tilebook("build", "--archive", archive, "--out", out);
    expect(err).toContain("That is in use, or a disk of its own.");
    expect(code).toBe(3);
  });
});

test("a search program that is ended before its time is told of, and the last good site stands", async () => {
  const out = await goodSite();
  const { code, err } = await spawnTilebook(["build", "--archive", archive, "--out", out], {
    env: { PAGEFIND_EXTENDED_BINARY_PATH: process.execPath },
  });
  expect(err).toContain("The search index could not be made");
  expect(code).toBe(3);
  expect(await sumsOf(out)).toEqual(before);
  expect(await beside(out)).toEqual(["site"]);
});

test("two builds at once leave a whole site, whoever comes last", async () => {
  const out = await goodSite();
  const args = ["build", "--archive", archive, "--out", out, "--quiet"];
  const both = await Promise.all([spawnTilebook(args), tilebook(...args)]);
  expect(both.map(({ code }) => code)).toContain(0);
  const { code, err } = await tilebook("build", "--archive", archive, "--out", out);
  expect(code).toBe(0);
  expect(err).toContain(": 0 pages written");
});

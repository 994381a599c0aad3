/**
 * Kills, full disks, flipped bits and crossing builds at moments that nobody chose. A few of each
 * here; `TILEBOOK_FAULTS=50` tries fifty times as many, and `docs/reliability.md` says what came of it.
 */
import { existsSync } from "node:fs";
import { cp, readdir, readFile, writeFile } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { failOn } from "../publish/failing-disk.ts";
import { soundFiles, writeFolder, writeInto } from "../support/archive-folder.ts";
import { removeFolder } from "../support/remove-folder.ts";
import { folderWith } from "./archives.ts";
import { listFiles, sumsOf } from "./site-files.ts";
import { spawnTilebook, tilebook } from "./tilebook.ts";

const factor = Number(process.env.TILEBOOK_FAULTS ?? 1);
const patience = 60_000 * (1 + factor);

let pottery: string;
let yard: string;
let sums: { readonly pottery: Sums; readonly yard: Sums };

type Sums = Readonly<Record<string, string>>;

/** Two archives of which every page and the search index differ, both built. */
beforeAll(async () => {
  const files = await soundFiles();
  pottery = await writeFolder(files);
  yard = await writeFolder({
    ...files,
    "studio.yaml": String(files["studio.yaml"]).replace("Eelgate Pottery", "Eelgate Yard"),
  });
  await writeInto(yard, { "tiles/EX-9.md": "---\nlayers: [{glaze: soot}]\n---\nAnother.\n" });
  for (const archive of [pottery, yard])
    expect((await tilebook("build", "--archive", archive)).code).toBe(0);
  sums = { pottery: await sumsOf(join(pottery, "site")), yard: await sumsOf(join(yard, "site")) };
});

afterAll(async () => {
  for (const archive of [pottery, yard]) await removeFolder(archive);
});

/** The pottery's site in a folder of its own, with a copy of what is remembered. */
async function placeOfPottery(): Promise<{ out: string; cache: string }> {
  const base = await folderWith({});
  const [out, cache] = [join(base, "site"), join(base, "cache")];
  await cp(join(pottery, "site"), out, { recursive: true });
  await cp(join(yard, ".cache"), cache, { recursive: true });
  return { out, cache };
}

const wordsFor = (archive: string, { out, cache }: { out: string; cache: string }) =>
  ["build", "--archive", archive, "--out", out, "--cache", cache, "--quiet"] as const;

/** What is left beside a site and its cache; a kill before a folder could be signed leaves it empty. */
async function leftBeside(out: string): Promise<string[]> {
  const names = (await readdir(dirname(out))).filter((name) => !["site", "cache"].includes(name));
  const full = names.map(async (name) => (await readdir(join(dirname(out), name))).length > 0);
  const kept = await Promise.all(full);
  return names.filter((_, index) => kept[index]);
}

/** Runs a property; a failure is told with the seed that repeats it, and is not made smaller. */
const tryTimes = async <Values extends [unknown, ...unknown[]]>(
  times: number,
  property: fc.IAsyncProperty<Values>,
) => fc.assert(property, { numRuns: times * factor, endOnFailure: true });

/** Ends the process at one of its calls of the disk, with half of a file written if that is what it did. */
const killer = (at: number) => `
  import fs from "node:fs";
  import { syncBuiltinESMExports } from "node:module";
  let calls = 0;
  const end = (call, words) => {
    if (call === "writeFile" && typeof words[0] === "string") {
      const half = Buffer.from(words[1] ?? "");
      fs.writeFileSync.real(words[0], half.subarray(0, half.length / 2));
    }
    process.kill(process.pid, "SIGKILL");
  };
  for (const call of ["link", "mkdir", "rename", "rm", "rmdir", "writeFile"])
    for (const [object, name] of [[fs.promises, call], [fs, call + "Sync"]]) {
      const real = object[name];
      object[name] = (...words) => {
        calls += 1;
        if (calls === ${at}) end(call, words);
        return real.apply(object, words);
      };
      object[name].real = real;
    }
  syncBuiltinESMExports();
  process.on("exit", () => process.stderr.write("calls: " + calls + "\\n"));`;

async function buildAndKill(words: readonly string[], at: number) {
  const preload = `data:text/javascript,${encodeURIComponent(killer(at))}`;
  return spawnTilebook(words, { node: ["--import", preload] });
}

describe.skipIf(process.platform === "win32")("a build that is killed", () => {
  test(
    "at any of its calls of the disk leaves the last site or the new one, whole, and the next build goes through",
    async () => {
      const whole = await buildAndKill(wordsFor(yard, await placeOfPottery()), 0);
      const calls = Number(/calls: (\d+)/u.exec(whole.err)?.[1]);
      expect(calls).toBeGreaterThan(100);
      const faulty = await folderWith({ "studio.yaml": "format: 1\n" });
      await tryTimes(
        3,
        fc.asyncProperty(fc.integer({ min: 1, max: calls }), async (at) => {
          const place = await placeOfPottery();
          const { code } = await buildAndKill(wordsFor(yard, place), at);
          if (code === 0) return;
          expect(code).toBeNull();
          if (!existsSync(place.out)) await tilebook(...wordsFor(faulty, place));
          expect([sums.pottery, sums.yard]).toContainEqual(await sumsOf(place.out));
          expect((await tilebook(...wordsFor(yard, place))).code).toBe(0);
          expect(await sumsOf(place.out)).toEqual(sums.yard);
          expect(await leftBeside(place.out)).toEqual([]);
        }),
      );
    },
    patience,
  );
});

describe("a disk that is full", () => {
  const calls = ["copyFile", "link", "mkdir", "rename", "writeFile"] as const;

  test(
    "at any call is told, or made do without; the last site or the new one stands, whole",
    async () => {
      await tryTimes(
        6,
        fc.asyncProperty(
          fc.constantFrom(...calls),
          fc.integer({ min: 1, max: 120 }),
          async (call, at) => {
            const place = await placeOfPottery();
            let called = 0;
            let isFilling = true;
            const base = dirname(place.out);
            failOn(call, "ENOSPC", (paths) => {
              if (!isFilling || !paths.some((path) => path.startsWith(base))) return false;
              called += 1;
              return called === at;
            });
            const { code } = await tilebook(...wordsFor(yard, place));
            isFilling = false;
            expect([0, 3]).toContain(code);
            expect(await sumsOf(place.out)).toEqual(code === 0 ? sums.yard : sums.pottery);
            expect((await tilebook(...wordsFor(yard, place))).code).toBe(0);
            expect(await leftBeside(place.out)).toEqual([]);
          },
        ),
      );
    },
    patience,
  );
});

describe("flipped bits", () => {
  const flips = fc.array(fc.tuple(fc.nat(), fc.nat(), fc.nat(7)), { minLength: 1, maxLength: 20 });

  test(
    "in what is remembered and in the last site are never published",
    async () => {
      await tryTimes(
        4,
        fc.asyncProperty(flips, async (chosen) => {
          const place = await placeOfPottery();
          await flipBits(dirname(place.out), chosen);
          const { code } = await tilebook(...wordsFor(yard, place));
          expect(code).toBe(0);
          expect(await sumsOf(place.out)).toEqual(sums.yard);
        }),
      );
    },
    patience,
  );
});

/** The mark names what Tilebook put there: a site whose mark cannot be read is somebody else's, and refused. */
async function flipBits(
  base: string,
  flips: readonly (readonly [file: number, byte: number, bit: number])[],
): Promise<void> {
  const files = (await listFiles(base)).filter((file) => basename(file) !== ".tilebook.json");
  for (const [file, byte, bit] of flips) {
    const path = join(base, files[file % files.length] ?? "");
    const bytes = await readFile(path);
    if (bytes.length === 0) continue;
    const at = byte % bytes.length;
    bytes[at] = (bytes[at] ?? 0) ^ (1 << bit);
    await writeFile(path, bytes);
  }
}

describe("two builds of two archives into one folder", () => {
  test(
    "that cross leave the site of one of them, whole, and nothing beside it",
    async () => {
      await tryTimes(
        1,
        fc.asyncProperty(fc.integer({ min: 0, max: 1500 }), async (wait) => {
          const place = await placeOfPottery();
          const both = await Promise.all([
            spawnTilebook(wordsFor(pottery, place)),
            new Promise((resolve) => setTimeout(resolve, wait)).then(() =>
              spawnTilebook(wordsFor(yard, place)),
            ),
          ]);
          expect(both).toEqual([0, 0].map((code) => ({ code, out: "", err: "" })));
          expect([sums.pottery, sums.yard]).toContainEqual(await sumsOf(place.out));
          expect(await leftBeside(place.out)).toEqual([]);
        }),
      );
    },
    patience,
  );
});

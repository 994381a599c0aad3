/**
 * Whatever is edited, in whatever order: a build that carries over what it can writes the very bytes
 * that a first build writes, and what is shown before it is written is the same. Some sequences here; `TILEBOOK_FAULTS=20` tries twenty times as many.
 */
import { createHash } from "node:crypto";
import { readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { expect, test } from "vitest";
import { linkSites } from "../../src/commands/build/build.ts";
import { readSiteAssets } from "../../src/publish/assets.ts";
import { siteMark } from "../../src/publish/staging.ts";
import { type SiteFile, unwrittenSites } from "../../src/publish/unwritten-sites.ts";
import { writeFolder } from "../support/archive-folder.ts";
import { removeFolder } from "../support/remove-folder.ts";
import { anyEdit, type Edit } from "./edits.ts";
import { plantedFiles } from "./planted.ts";
import { sumsOf } from "./site-files.ts";
import { tilebook } from "./tilebook.ts";

const factor = Number(process.env.TILEBOOK_FAULTS ?? 1);

/** What is faulty after an edit waits; where nothing is left to publish the last site stays. */
function build(archive: string, ...words: readonly string[]) {
  return tilebook("build", "--archive", archive, "--leave-out-faulty", "--quiet", ...words);
}

async function compare(archive: string, edits: readonly Edit[]): Promise<void> {
  const done = edits.map(({ what }) => what).join("; ");
  const again = await build(archive);
  const [site, cache] = [join(archive, "..site"), join(archive, "..cache")];
  const first = await build(archive, "--out", site, "--cache", cache);
  expect(again.code, done).toBe(first.code);
  if (first.code === 0) {
    const sums = await sumsOf(site);
    expect(await sumsOf(join(archive, "site")), done).toEqual(sums);
    expect(await sumsOfUnwritten(archive, Object.keys(sums)), done).toEqual(
      Object.fromEntries(Object.entries(sums).filter(([file]) => isShownBefore(file))),
    );
  }
  for (const folder of [site, cache]) rmSync(folder, { recursive: true, force: true });
}

/** The index for words is made last, and the mark is nobody's to see. */
function isShownBefore(file: string): boolean {
  return !/(^|\/)pagefind\//u.test(file) && file !== siteMark;
}

/** The sums of those files that `serve` shows while the site is written. */
async function sumsOfUnwritten(archive: string, files: readonly string[]) {
  const linked = await linkSites({ archive, leaveOutFaulty: true, quiet: true });
  if (!linked.sites) throw new Error("What can be built can be linked");
  const { sites, pictureFile } = linked;
  const { find } = unwrittenSites(sites, { assets: await readSiteAssets(), pictureFile });
  const sums = files.map(async (file) => {
    const found = find(file);
    if (found === undefined || found === "later") return [];
    return [
      [
        file,
        createHash("sha256")
          .update(await contentOf(found))
          .digest("hex"),
      ],
    ];
  });
  return Object.fromEntries((await Promise.all(sums)).flat());
}

function contentOf(file: SiteFile) {
  if ("at" in file) return readFileSync(file.at);
  return "make" in file ? file.make() : file.content;
}

test("after any edits, one after another, a site is what a first build makes of the archive", {
  timeout: 120_000 * factor,
}, async () => {
  const files = await plantedFiles();
  await fc.assert(
    fc.asyncProperty(fc.array(anyEdit, { minLength: 5, maxLength: 5 }), async (edits) => {
      const archive = await writeFolder(files);
      await build(archive);
      for (const [i, edit] of edits.entries()) {
        edit.make(archive);
        await compare(archive, edits.slice(0, i + 1));
      }
      await removeFolder(archive);
    }),
    { numRuns: 3 * factor, endOnFailure: true },
  );
});

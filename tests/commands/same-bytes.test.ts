/** The same archive gives the same bytes, wherever and whenever it is built. */
import { cp, mkdir } from "node:fs/promises";
import { join } from "node:path";
import { expect, test } from "vitest";
import { archiveWith, folderWith } from "./archives.ts";
import { plantedFiles } from "./planted.ts";
import { sumsOf } from "./site-files.ts";
import { spawnTilebook } from "./tilebook.ts";

const here = { TZ: "Pacific/Kiritimati", LANG: "tr_TR.UTF-8", LC_ALL: "tr_TR.UTF-8" };
const there = { TZ: "America/St_Johns", LANG: "C", LC_ALL: "C" };

test("two builds in two folders, time zones and locales are the same, search included", async () => {
  const one = await archiveWith(await plantedFiles());
  const two = await folderWith({});
  await cp(one, join(two, "a longer way", "Archiv"), { recursive: true });
  await mkdir(join(two, "elsewhere"));
  const built = await Promise.all([
    spawnTilebook(["build", "--archive", ".", "--out", "site"], { cwd: one, env: here }),
    spawnTilebook(
      [
        ...["build", "--archive", "../a longer way/Archiv", "--out", join(two, "published")],
        ...["--cache", join(two, "remembered")],
      ],
      { cwd: join(two, "elsewhere"), env: there },
    ),
  ]);
  expect(built.map(({ code }) => code)).toEqual([0, 0]);
  const [first, second] = [await sumsOf(join(one, "site")), await sumsOf(join(two, "published"))];
  expect(Object.keys(first).filter((file) => file.startsWith("pagefind/")).length).toBeGreaterThan(
    9,
  );
  expect(second).toEqual(first);
});

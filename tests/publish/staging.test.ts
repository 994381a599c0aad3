/** Sites change places whole, whatever ends a build and whoever else builds; nobody else's folder is touched. */
import { existsSync } from "node:fs";
import {
  cp,
  mkdir,
  mkdtemp,
  readdir,
  readFile,
  rename,
  rm,
  symlink,
  utimes,
  writeFile,
} from "node:fs/promises";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import {
  mendAfterKill,
  openStaging,
  type Staging,
  StagingLost,
} from "../../src/publish/staging.ts";
import { removeFolder } from "../support/remove-folder.ts";
import { failOn } from "./failing-disk.ts";

let base: string;
let out: string;

beforeEach(async () => {
  base = await mkdtemp(join(tmpdir(), "tilebook-test-"));
  out = join(base, "site");
});

afterEach(() => removeFolder(base));

/** A site of two files with the same words, as a whole one has. */
async function open(words: string): Promise<Staging> {
  const staging = await openStaging(out);
  await writeFile(join(staging.folder, "index.html"), words);
  await writeFile(join(staging.folder, "last.html"), words);
  return staging;
}

async function publish(words: string): Promise<void> {
  await (await open(words)).publish();
}

async function wordsOf(site: string): Promise<string> {
  const [first, last] = await Promise.all(
    ["index.html", "last.html"].map((file) => readFile(join(site, file), "utf8")),
  );
  expect(last).toBe(first);
  return first ?? "";
}

const beside = async () => (await readdir(base)).filter((name) => name !== "site");
const ownerOf = (folder: string) => join(folder, "owner.json");

/** The folder of a build, as a kill leaves it: of a process that has ended, here or elsewhere. */
async function killed(words: string, change: Record<string, unknown> = {}): Promise<string> {
  const { folder } = await open(words);
  const owned = join(folder, "..");
  const owner = JSON.parse(await readFile(ownerOf(owned), "utf8")) as object;
  const token = "0123456789abcdef0123456789abcdef";
  const left = `${out}.tilebook-${token}`;
  await rename(owned, left);
  await writeFile(
    ownerOf(left),
    JSON.stringify({ ...owner, token, processNumber: 4_194_999, ...change }),
  );
  return left;
}

async function fallSilent(owned: string, minutes: number): Promise<void> {
  const then = new Date(Date.now() - minutes * 60_000);
  await utimes(ownerOf(owned), then, then);
}

describe("a build that was killed", () => {
  test("while it wrote leaves the last good site, and the next command clears away its beginnings", async () => {
    await publish("good");
    await killed("half");
    await mendAfterKill(out);
    expect(await wordsOf(out)).toBe("good");
    expect(await beside()).toEqual([]);
  });

  test("between the two renames leaves a site that the next command brings back", async () => {
    await publish("good");
    await rename(out, join(await killed("better"), "last-0"));
    await mendAfterKill(out);
    expect(await wordsOf(out)).toBe("good");
    expect(await beside()).toEqual([]);
  });

  test("between the two renames leaves it even where a checkout put the empty folder back", async () => {
    await mkdir(out);
    await writeFile(join(out, ".gitignore"), "*\n");
    await publish("good");
    await rename(out, join(await killed("better"), "last-0"));
    await mkdir(out);
    await writeFile(join(out, ".gitignore"), "*\n");
    await mendAfterKill(out);
    expect(await wordsOf(out)).toBe("good");
    expect(await readFile(join(out, ".gitignore"), "utf8")).toBe("*\n");
    expect(await beside()).toEqual([]);
  });

  test("in another container leaves a site that is brought back at once", async () => {
    await publish("good");
    await rename(out, join(await killed("better", { computer: "another" }), "last-0"));
    await mendAfterKill(out);
    expect(await wordsOf(out)).toBe("good");
  });

  test("leaves the latest of the sites that it had moved aside", async () => {
    await publish("old");
    const left = await killed("better");
    await rename(out, join(left, "last-9"));
    await publish("good");
    await rename(out, join(left, "last-10"));
    await mendAfterKill(out);
    expect(await wordsOf(out)).toBe("good");
  });

  test("leaves the last good site alone where somebody put files of their own in its place", async () => {
    await publish("good");
    const left = await killed("better");
    await rename(out, join(left, "last-0"));
    await mkdir(out);
    await writeFile(join(out, "holiday.jpg"), "x");
    await mendAfterKill(out);
    expect(await readdir(out)).toEqual(["holiday.jpg"]);
    expect(await wordsOf(join(left, "last-0"))).toBe("good");
  });

  test("while it cleared away leaves what the next command clears away", async () => {
    await publish("good");
    const left = await killed("half");
    await rm(join(left, "new", "index.html"));
    await rename(left, left.replace(".tilebook-", ".tilebook-going-"));
    await mendAfterKill(out);
    expect(await beside()).toEqual([]);
  });

  test("in another container is believed to be at work for an hour", async () => {
    const left = await killed("half", { computer: "another" });
    await fallSilent(left, 59);
    await mendAfterKill(out);
    expect(existsSync(left)).toBe(true);
    await fallSilent(left, 61);
    await mendAfterKill(out);
    expect(existsSync(left)).toBe(false);
  });
});

describe("a build that goes on", () => {
  test("in this process keeps its folder, however long it takes", async () => {
    const { folder, discard } = await open("half");
    await fallSilent(join(folder, ".."), 600);
    await mendAfterKill(out);
    expect(await wordsOf(folder)).toBe("half");
    await discard();
  });

  test("in another process of this computer keeps its folder", async () => {
    const left = await killed("half", { processNumber: process.ppid });
    await mendAfterKill(out);
    expect(await wordsOf(join(left, "new"))).toBe("half");
  });

  test("and is thrown away leaves the last good site", async () => {
    await publish("good");
    await (await open("bad")).discard();
    expect(await wordsOf(out)).toBe("good");
    expect(await beside()).toEqual([]);
  });

  test.each([
    ["is taken away", (owned: string) => rm(owned, { recursive: true })],
    ["is somebody else's", (owned: string) => writeFile(ownerOf(owned), '{"token": "other"}')],
  ])("publishes nothing once its folder %s", async (_, take) => {
    await publish("good");
    const staging = await open("half");
    const owned = join(staging.folder, "..");
    await take(owned);
    await mkdir(join(staging.folder, "tiles"), { recursive: true });
    await expect(staging.publish()).rejects.toThrow(new StagingLost(owned).message);
    await staging.discard();
    expect(await wordsOf(out)).toBe("good");
    expect(await beside()).toEqual([]);
  });
});

describe("a new site that cannot take its place", () => {
  test("leaves the last one there", async () => {
    await publish("good");
    failOn("rename", "EBUSY", ([from, to]) => from.endsWith("new") && to === out);
    const staging = await open("better");
    await expect(staging.publish()).rejects.toThrow("EBUSY");
    await staging.discard();
    expect(await wordsOf(out)).toBe("good");
    expect(await beside()).toEqual([]);
  });

  test("leaves it for the next command where it cannot be put back either", async () => {
    await publish("good");
    const staging = await open("better");
    let fails = true;
    failOn("rename", "EBUSY", ([, to]) => fails && to === out);
    await expect(staging.publish()).rejects.toThrow("EBUSY");
    await staging.discard();
    expect(existsSync(out)).toBe(false);
    fails = false;
    await mendAfterKill(out);
    expect(await wordsOf(out)).toBe("good");
    expect(await beside()).toEqual([]);
  });
});

test("a new site that took its place stands, though what it replaced cannot be cleared away yet", async () => {
  await publish("good");
  let fails = true;
  failOn("rename", "EBUSY", ([, to]) => fails && to.includes(".tilebook-going-"));
  await publish("better");
  expect(await wordsOf(out)).toBe("better");
  expect(await beside()).toHaveLength(1);
  fails = false;
  await mendAfterKill(out);
  expect(await wordsOf(out)).toBe("better");
  expect(await beside()).toEqual([]);
});

test.each([
  ["mkdir", "new"],
  ["mkdir", "empty"],
  ["writeFile", "owner.json"],
] as const)(
  "a folder that cannot be made ready, since %s of %s fails, is not left",
  async (call, name) => {
    failOn(call, "ENOSPC", ([path]) => basename(path) === name);
    await expect(openStaging(out)).rejects.toThrow("ENOSPC");
    expect(await beside()).toEqual([]);
  },
);

describe("builds that come to their end at once", () => {
  test("leave one whole site, and nothing beside it", async () => {
    await publish("first");
    await writeFile(join(out, ".gitignore"), "*\n");
    for (let round = 0; round < 40; round += 1) {
      const builds = await Promise.all([1, 2, 3].map((each) => open(`${round} ${each}`)));
      const mending = [mendAfterKill(out), mendAfterKill(out)];
      await Promise.all([...builds.map((build) => build.publish()), ...mending]);
      expect(await wordsOf(out)).toMatch(new RegExp(`^${round} [123]$`, "u"));
      expect(await readFile(join(out, ".gitignore"), "utf8")).toBe("*\n");
      expect(await beside()).toEqual([]);
    }
  });
});

describe("folders that are named like ours", () => {
  const token = "00112233445566778899aabbccddeeff";

  test.each([
    ["with no token in them", ""],
    [
      "with another token in them",
      '{"token":"ffeeddccbbaa99887766554433221100","computer":"","processNumber":1}',
    ],
    ["with half of what we write", `{"token":"${token}"`],
    ["with something else", `["${token}"]`],
  ])("%s stay as they are, however old", async (_, owner) => {
    await publish("good");
    for (const name of [`site.tilebook-${token}`, `site.tilebook-going-${token}`]) {
      await cp(out, join(base, name, "last-0"), { recursive: true });
      if (owner) await writeFile(join(base, name, "owner.json"), owner);
      if (owner) await fallSilent(join(base, name), 600);
    }
    await rm(out, { recursive: true });
    await mendAfterKill(out);
    expect(existsSync(out)).toBe(false);
    await publish("better");
    await mendAfterKill(out);
    for (const name of [`site.tilebook-${token}`, `site.tilebook-going-${token}`])
      expect(await wordsOf(join(base, name, "last-0"))).toBe("good");
  });

  test.each([
    "site.tilebook-old",
    "site.tilebook-new-4194999",
    "site.tilebook-notes",
    "site.tilebook-",
    `other.tilebook-${token}`,
  ])("and are not: %s", async (name) => {
    await mkdir(join(base, name));
    await writeFile(join(base, name, "index.html"), "mine");
    await mendAfterKill(out);
    await publish("good");
    await mendAfterKill(out);
    expect(await readFile(join(base, name, "index.html"), "utf8")).toBe("mine");
  });

  test("by a link that leads to another folder stay, and so does that folder", async () => {
    const left = await killed("half");
    const elsewhere = join(base, "elsewhere");
    await rename(left, elsewhere);
    await symlink(elsewhere, left);
    await mendAfterKill(out);
    expect(await wordsOf(join(elsewhere, "new"))).toBe("half");
  });
});

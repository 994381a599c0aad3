import { copyFile, mkdtemp, readdir, readFile, rm, utimes, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { openLedger } from "../../src/publish/ledger.ts";
import { sumOf } from "../../src/publish/sum.ts";

let base: string;
let file: string;

const path = "s-a-secret-token.html";
const facts = { key: "made of this", sum: sumOf("some words"), words: "words" };
const hourAgo = new Date(Date.now() - 3_600_000);

const open = () => openLedger(join(base, "cache"), join(base, "site"));

/** Writes the file, notes and stores it, and opens what was stored. */
async function stored(written = hourAgo) {
  await writeFile(file, "some words");
  await utimes(file, written, written);
  const ledger = await open();
  ledger.note(path, facts);
  ledger.noteWhole("pagefind", "whole");
  await ledger.store(base);
  return open();
}

async function storedFile(): Promise<string> {
  const [name = ""] = await readdir(join(base, "cache/sites"));
  return join(base, "cache/sites", name);
}

beforeEach(async () => {
  base = await mkdtemp(join(tmpdir(), "tilebook-ledger-"));
  file = join(base, path);
});

afterEach(async () => {
  vi.unstubAllEnvs();
  await rm(base, { recursive: true, force: true });
});

describe("what is remembered of the last site", () => {
  test("is found again, and is nothing of what was not noted", async () => {
    const ledger = await stored();
    expect(ledger.find(path)).toEqual(facts);
    expect(ledger.findWhole("pagefind")).toBe("whole");
    expect(ledger.find("other.html")).toBeUndefined();
    expect(ledger.keeps("other.html", file)).toBe(false);
  });

  test("is remembered on where a file is kept, and forgotten where it is not", async () => {
    const next = await stored();
    expect(next.keeps(path, file)).toBe(true);
    await next.store(base);
    const third = await open();
    expect(third.find(path)).toEqual(facts);
    expect(third.findWhole("pagefind")).toBeUndefined();
    await third.store(base);
    expect((await open()).find(path)).toBeUndefined();
  });

  test("names no address, since those of unlisted sets are secrets", async () => {
    await stored();
    expect(await readFile(await storedFile(), "utf8")).not.toContain("secret");
  });

  test("is not believed where it was changed, or made by somebody else", async () => {
    await stored();
    vi.stubEnv("XDG_CACHE_HOME", join(base, "elsewhere"));
    expect((await open()).find(path)).toBeUndefined();
    vi.unstubAllEnvs();
    const text = await readFile(await storedFile(), "utf8");
    await writeFile(await storedFile(), text.replace(facts.key, "made of that"));
    expect((await open()).find(path)).toBeUndefined();
  });

  test("is that of one folder: another site has a memory of its own", async () => {
    await stored();
    const other = await openLedger(join(base, "cache"), join(base, "other"));
    expect(other.find(path)).toBeUndefined();
  });
});

describe("a file of the last site", () => {
  test("is the same where it was moved or copied whole", async () => {
    const ledger = await stored();
    const copy = join(base, "copy.html");
    await copyFile(file, copy);
    expect(ledger.keeps(path, copy)).toBe(true);
  });

  test("is another where it was written to, though it is as long as before", async () => {
    const ledger = await stored();
    await writeFile(file, "more words");
    expect(ledger.keeps(path, file)).toBe(false);
  });

  test("is another where somebody put a file of the same time and length in its place", async () => {
    const ledger = await stored();
    const other = join(base, "other.html");
    await writeFile(other, "more words");
    await utimes(other, hourAgo, hourAgo);
    expect(ledger.keeps(path, other)).toBe(false);
  });

  test("is read where it was written in the moment in which it was noted, and may have been again", async () => {
    const now = new Date();
    const ledger = await stored(now);
    await writeFile(file, "more words");
    await utimes(file, now, now);
    expect(ledger.keeps(path, file)).toBe(false);
  });
});

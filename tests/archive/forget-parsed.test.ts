import fs from "node:fs";
import path from "node:path";
import { expect, test } from "vitest";
import { forgetParsed } from "../../src/archive/forget-parsed.ts";
import { temporaryFolder, writeFiles } from "./archives.ts";

test("what an earlier version remembered of records is taken out of the cache", () => {
  const dir = temporaryFolder();
  writeFiles(dir, { "parsed/0a": "Bram's notes", "parsed/ff.4711": "half", "pictures/x": "kept" });
  forgetParsed(dir);
  expect(fs.readdirSync(dir)).toEqual(["pictures"]);
});

test("a folder of that name that somebody else fills keeps what is not Tilebook's", () => {
  const dir = temporaryFolder();
  writeFiles(dir, { "parsed/0a": "words", "parsed/my-thesis.txt": "kept" });
  forgetParsed(dir);
  expect(fs.readdirSync(path.join(dir, "parsed"))).toEqual(["my-thesis.txt"]);
});

test("a cache without any is left as it is", () => {
  const dir = temporaryFolder();
  forgetParsed(dir);
  expect(fs.readdirSync(dir)).toEqual([]);
});

/** The program works wherever it is called from, and tells which one it is. */
import { parse } from "node:path";
import { expect, test } from "vitest";
import { ownVersion } from "../../src/commands/version.ts";
import { archiveWith } from "./archives.ts";
import { spawnTilebook, tilebook } from "./tilebook.ts";

test("a build may be called from the root of the disk", async () => {
  const archive = await archiveWith({});
  const ended = await spawnTilebook(["build", "--archive", archive, "--quiet"], {
    cwd: parse(process.cwd()).root,
  });
  expect(ended).toEqual({ code: 0, out: "", err: "" });
}, 60_000);

test("the version is that of the package", async () => {
  const { code, out } = await spawnTilebook(["--version"]);
  expect({ code, out }).toEqual({ code: 0, out: `${ownVersion()}\n` });
  expect(ownVersion()).toMatch(/^\d+\.\d+\.\d+$/u);
});

test("a cache that cannot be a folder is told in words", async () => {
  const archive = await archiveWith({ "cache-file": "" });
  const { code, err } = await tilebook(
    ...["build", "--archive", archive, "--cache", `${archive}/cache-file`, "--quiet"],
  );
  expect(code).toBe(3);
  expect(err).toMatch(
    /cache-file.*: A file is there where a folder should be\. Take it away, or name another folder with --out or --cache\.$/u,
  );
});

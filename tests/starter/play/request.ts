/** A small archive on a forge, and requests to it. */
import { execFileSync } from "node:child_process";
import { mkdir, mkdtemp, readFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { vi } from "vitest";
import { newArchive } from "../../../src/commands/new/new-archive.ts";
import { commitAll, git } from "../../git/git.ts";
import { type Files, photograph, writeInto } from "../../support/archive-folder.ts";
import { copyExamples } from "../../support/begun-archive.ts";

/** The forge's own copy of an archive, and where what is played of it lies. */
export interface Begun {
  /** All of it, to be removed after the test. */
  readonly root: string;
  readonly origin: string;
}

/** Begins an archive as a studio would, with one tile, and puts it on a forge. */
export async function beginArchive(): Promise<Begun> {
  const root = await mkdtemp(join(tmpdir(), "tilebook-played-"));
  const origin = join(root, "origin");
  await mkdir(origin);
  const silent = vi.spyOn(console, "log").mockImplementation(() => undefined);
  await newArchive(origin);
  silent.mockRestore();
  await copyExamples(origin);
  git(origin, "init", "--quiet");
  commitAll(origin, "Begin");
  return { root, origin };
}

export interface Request {
  /** What the forge checks out: the request as it would be once it is merged. */
  readonly clone: string;
  /** Its last commit. */
  readonly head: string;
}

/**
 * Sends a request with these files, and checks it out as the forge does.
 *
 * @param meanwhile what the main branch gained after the request's own branch began
 */
export async function sendRequest(
  { root, origin }: Begun,
  branch: string,
  files: Files,
  meanwhile: Files = {},
): Promise<Request> {
  git(origin, "checkout", "--quiet", "-b", branch, "main");
  await writeInto(origin, files);
  const head = commitAll(origin, "Bring a tile");
  git(origin, "checkout", "--quiet", "main");
  await writeInto(origin, meanwhile);
  commitAll(origin, "Go on");
  git(origin, "checkout", "--quiet", "--detach", "main");
  git(origin, "merge", "--quiet", "--no-ff", "-m", "Merge", head);
  git(origin, "update-ref", "refs/pull/7/merge", "HEAD");
  git(origin, "checkout", "--quiet", "main");
  const clone = await mkdtemp(join(root, "clone-"));
  execFileSync("git", ["clone", "--quiet", origin, clone]);
  git(clone, "fetch", "--quiet", "origin", "+refs/pull/7/merge:refs/remotes/pull/7/merge");
  git(clone, "checkout", "--quiet", "--detach", "refs/remotes/pull/7/merge");
  return { clone, head };
}

/** The files of one tile more, with its photograph. */
export async function oneTile(code: string, record: string = layers): Promise<Files> {
  return {
    [`tiles/autumn/${code}.md`]: record,
    [`tiles/autumn/${code}.jpg`]: await photograph("#7a5c49"),
  };
}

const layers =
  "---\nlayers: [{glaze: tidewrack, coats: 2, by: brush}]\n---\nA second coat over the same jar.\n";

/** What package.json says with something else in it. */
export async function packageWith({ origin }: Begun, more: object): Promise<string> {
  const text = await readFile(join(origin, "package.json"), "utf8");
  return JSON.stringify({ ...JSON.parse(text), ...more }, null, 2);
}

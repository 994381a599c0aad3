/** Styles, scripts and fonts: bundled from `templates/` and `src/browser/` into `assets/`. */
import { cp, readdir, readFile } from "node:fs/promises";
import { basename, join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { writeOrCarry } from "./carry.ts";
import type { Target } from "./staging.ts";

const project = fileURLToPath(new URL("../../", import.meta.url));
const templates = join(project, "templates");
const browser = join(project, "src", "browser");

/** Writes every asset that a page may ask for. Scripts are classic ones, so that a page opened from a folder runs them. */
export async function writeAssets(target: Target): Promise<void> {
  const bundled = await bundle([join(templates, "styles", "site.css"), ...(await scriptFiles())]);
  for (const [name, contents] of bundled)
    await writeOrCarry(target, join("assets", name), contents);
  await cp(join(templates, "assets"), join(target.folder, "assets"), { recursive: true });
}

/** What the page at the copy stand asks for, by its address beneath `assets/`. */
export function makeCopyStandAssets(): Promise<ReadonlyMap<string, Uint8Array>> {
  return makeOwnAssets([
    join(templates, "styles", "copystand.css"),
    join(browser, "crop", "copystand.ts"),
  ]);
}

/** What `serve` adds to pages, and what the page asks for that stands in for a site, by its name. */
export function makeServeAssets(): Promise<ReadonlyMap<string, Uint8Array>> {
  return makeOwnAssets(
    ["trouble.css", "no-site.css"].map((name) => join(templates, "styles", name)),
  );
}

/** Styles and scripts for pages that are no part of the site, with the fonts and the icon. */
async function makeOwnAssets(entries: string[]): Promise<ReadonlyMap<string, Uint8Array>> {
  const fonts = join(templates, "assets", "fonts");
  const files = (await readdir(fonts)).filter((name) => name.endsWith(".woff2"));
  return new Map([
    ...(await bundle(entries)),
    ["icon.svg", await readFile(join(templates, "assets", "icon.svg"))] as const,
    ...(await Promise.all(
      files.map(async (name) => [`fonts/${name}`, await readFile(join(fonts, name))] as const),
    )),
  ]);
}

/** Bundles styles and scripts, each under the name of its first file. */
async function bundle(
  entryPoints: string[],
): Promise<readonly (readonly [name: string, contents: Uint8Array])[]> {
  const { outputFiles } = await build({
    entryPoints,
    outdir: project,
    entryNames: "[name]",
    bundle: true,
    minify: true,
    write: false,
    format: "iife",
    target: ["es2022"],
    charset: "utf8",
    legalComments: "none",
    external: ["*.woff2", "*/pagefind.js"],
    logLevel: "silent",
  });
  return outputFiles.map(({ path, contents }) => [basename(path), contents] as const);
}

/** A script a page loads is a file of `src/browser/` itself; its parts lie in folders there. */
async function scriptFiles(): Promise<string[]> {
  const entries = await readdir(browser, { withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile() && entry.name.endsWith(".ts"))
    .map((entry) => join(browser, entry.name))
    .sort();
}

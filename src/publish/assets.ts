/** Styles, scripts and fonts: bundled from `templates/` and `src/browser/` into `assets/`. */
import { cp, readdir } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { writeOrCarry } from "./carry.ts";
import type { Target } from "./site-folder.ts";

const project = fileURLToPath(new URL("../../", import.meta.url));
const templates = join(project, "templates");
const browser = join(project, "src", "browser");

/** Writes every asset that a page may ask for. Scripts are classic ones, so that a page opened from a folder runs them. */
export async function writeAssets(target: Target): Promise<void> {
  const bundled = await build({
    entryPoints: [join(templates, "styles", "site.css"), ...(await scriptFiles())],
    outdir: join(target.folder, "assets"),
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
  for (const { path, contents } of bundled.outputFiles) {
    await writeOrCarry(target, path.slice(target.folder.length + 1), contents);
  }
  await cp(join(templates, "assets"), join(target.folder, "assets"), { recursive: true });
}

/** A script a page loads is a file of `src/browser/` itself; its parts lie in folders there. */
async function scriptFiles(): Promise<string[]> {
  const entries = await readdir(browser, { withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile() && entry.name.endsWith(".ts"))
    .map((entry) => join(browser, entry.name))
    .sort();
}

/** Bundles the styles and scripts that browsers load, and puts fonts and icon beside them. */
import { cp, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { build } from "esbuild";
import { listScripts, stylesOfPages } from "./page-styles.mjs";

/** What pages that are no part of a site ask for, by the name of their folder. */
const besidesTheSite = {
  copystand: ["templates/styles/copystand.css", "src/browser/crop/copystand.ts"],
  serve: ["templates/styles/trouble.css", "templates/styles/no-site.css"],
};

/**
 * Writes a folder of assets for the site, one for the copy stand, one for what `serve` shows, and one
 * of what all three use.
 *
 * @param {string} project
 * @param {string} folder
 */
export async function compileAssets(project, folder) {
  const scripts = (await listScripts(project)).map((name) => `src/browser/${name}`);
  const all = { site: scripts, ...besidesTheSite };
  await cp(join(project, "templates/assets"), join(folder, "shared"), { recursive: true });
  for (const [name, files] of Object.entries(all)) {
    const entryPoints = files.map((file) => join(project, file));
    await bundle(entryPoints, join(folder, name));
  }
  for (const [name, styles] of Object.entries(await stylesOfPages(project)))
    await writeFile(join(folder, "site", name), styles);
}

/**
 * Each under the name of its first file. Scripts are classic ones, so that a page opened from a folder
 * runs them.
 *
 * @param {string[]} entryPoints
 * @param {string} outdir
 */
async function bundle(entryPoints, outdir) {
  await build({
    entryPoints,
    outdir,
    entryNames: "[name]",
    bundle: true,
    minify: true,
    format: "iife",
    target: ["es2022"],
    charset: "utf8",
    legalComments: "none",
    external: ["*.woff2", "*/pagefind.js"],
    logLevel: "error",
  });
}

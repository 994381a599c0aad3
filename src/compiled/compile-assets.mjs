/** Bundles the styles and scripts that browsers load, and puts fonts and icon beside them. */
import { cp, readdir } from "node:fs/promises";
import { join } from "node:path";
import { build } from "esbuild";

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
  const all = {
    site: ["templates/styles/site.css", ...(await listScripts(join(project, "src/browser")))],
    ...besidesTheSite,
  };
  await cp(join(project, "templates/assets"), join(folder, "shared"), { recursive: true });
  for (const [name, files] of Object.entries(all)) {
    const entryPoints = files.map((file) => join(project, file));
    await bundle(entryPoints, join(folder, name));
  }
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

/**
 * A script a page loads is a file of `src/browser/` itself; its parts lie in folders there.
 *
 * @param {string} browser
 */
async function listScripts(browser) {
  const entries = await readdir(browser, { withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile() && entry.name.endsWith(".ts"))
    .map((entry) => `src/browser/${entry.name}`)
    .sort();
}

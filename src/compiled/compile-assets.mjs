/** Bundles the styles and scripts that browsers load, and puts fonts and icon beside them. */
import { cp, readdir, writeFile } from "node:fs/promises";
import { join, sep } from "node:path";
import { build } from "esbuild";
import { listScripts, stylesOfPages } from "./page-styles.mjs";

/** What pages that are no part of a site ask for, by the name of their folder. */
const besidesTheSite = {
  copystand: ["templates/styles/copystand.css", "src/browser/crop/copystand.ts"],
  serve: ["trouble", "no-site", "way-to-desk"].map((name) => `templates/styles/${name}.css`),
};

/**
 * Writes a folder of assets for the site, one for the copy stand, one for what `serve` shows, one for the
 * desk, and one of what all of them use.
 *
 * @param {string} project
 * @param {string} folder
 */
export async function compileAssets(project, folder) {
  const scripts = (await listScripts(project)).map((name) => `src/browser/${name}`);
  const desk = [
    ...["templates/styles/desk.css", "templates/styles/let-in.css"],
    ...(await listDeskScripts(project)),
  ];
  const all = { site: scripts, ...besidesTheSite, desk };
  await cp(join(project, "templates/assets"), join(folder, "shared"), { recursive: true });
  for (const [name, files] of Object.entries(all)) {
    const entryPoints = files.map((file) => join(project, file));
    await bundle(entryPoints, join(folder, name));
  }
  for (const [name, styles] of Object.entries(await stylesOfPages(project)))
    await writeFile(join(folder, "site", name), styles);
}

/**
 * As of the site: a script that a page of the desk loads is a file of `src/browser/desk/` itself.
 *
 * @param {string} project
 */
async function listDeskScripts(project) {
  const files = await readdir(join(project, "src/browser"), { recursive: true });
  return files
    .map((file) => `src/browser/${file.replaceAll(sep, "/")}`)
    .filter((file) => /^src\/browser\/desk\/[^/]+\.ts$/u.test(file))
    .sort();
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

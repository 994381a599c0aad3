/**
 * Compiles the sources to what a package holds: the program as JavaScript, one file for each command
 * and what they share; what browsers load, ready to be copied; the files of a new archive.
 */
import { cp, mkdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { build } from "esbuild";
import { compileAssets } from "./compile-assets.mjs";
import { projectFolder, sumsOfRooms } from "./sources.mjs";

/** @param {string} folder a folder that is absent or empty */
export async function compileInto(folder) {
  const project = projectFolder();
  await mkdir(folder, { recursive: true });
  await compileProgram(project, folder);
  await compileAssets(project, join(folder, "assets"));
  await cp(join(project, "src/starter"), join(folder, "starter"), { recursive: true });
  await writeFile(join(folder, "rooms.json"), JSON.stringify(sumsOfRooms()));
}

/**
 * Packages stay what they are and where npm put them.
 *
 * @param {string} project
 * @param {string} folder
 */
async function compileProgram(project, folder) {
  await build({
    entryPoints: {
      tilebook: join(project, "src/program.ts"),
      "heic-worker": join(project, "src/photos/heic-worker.mjs"),
    },
    outdir: folder,
    outExtension: { ".js": ".mjs" },
    tsconfig: join(project, "tsconfig.json"),
    bundle: true,
    splitting: true,
    packages: "external",
    platform: "node",
    format: "esm",
    target: "node20",
    charset: "utf8",
    define: { "import.meta.compiled": "true" },
    minifySyntax: true,
    logLevel: "error",
  });
}

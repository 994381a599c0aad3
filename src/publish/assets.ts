/** Styles, scripts and fonts, as they were compiled from `templates/` and `src/browser/`. */
import { readdir, readFile } from "node:fs/promises";
import { join, relative, sep } from "node:path";
import { compiledFolder } from "../compiled/own-files.ts";

/** Every asset that a page may ask for, by its path beneath `assets/`. */
export function readSiteAssets(): Promise<ReadonlyMap<string, Uint8Array>> {
  return readAssets("site");
}

/** What the page at the copy stand asks for, by its address beneath `assets/`. */
export function readCopyStandAssets(): Promise<ReadonlyMap<string, Uint8Array>> {
  return readAssets("copystand");
}

/** What `serve` adds to pages, and what the page asks for that stands in for a site, by its name. */
export function readServeAssets(): Promise<ReadonlyMap<string, Uint8Array>> {
  return readAssets("serve");
}

/** What the pages of the desk ask for, by its address beneath their `assets/`. */
export function readDeskAssets(): Promise<ReadonlyMap<string, Uint8Array>> {
  return readAssets("desk");
}

async function readAssets(
  kind: "site" | "copystand" | "serve" | "desk",
): Promise<ReadonlyMap<string, Uint8Array>> {
  const assets = join(await compiledFolder(), "assets");
  const [own, shared] = await Promise.all([
    readFolder(join(assets, kind)),
    readFolder(join(assets, "shared")),
  ]);
  return new Map([...own, ...shared]);
}

/** Every file beneath a folder, by its path from there with forward slashes. */
async function readFolder(folder: string): Promise<readonly (readonly [string, Uint8Array])[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const files = entries
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));
  return Promise.all(
    files.map(
      async (file) => [relative(folder, file).split(sep).join("/"), await readFile(file)] as const,
    ),
  );
}

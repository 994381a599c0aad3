/** Sites to open in a browser, each built once for the file of tests that asks for it. */
import { cp, readFile } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import sharp from "sharp";
import { afterAll, beforeAll } from "vitest";
import { build } from "../../src/commands/build/build.ts";
import { listFiles } from "../commands/site-files.ts";
import {
  type Files,
  photograph,
  soundFiles,
  writeFolder,
  writeInto,
} from "../support/archive-folder.ts";
import { removeFolder } from "../support/remove-folder.ts";

const project = fileURLToPath(new URL("../../", import.meta.url));

/** A site that stands once the tests of a file begin. */
export interface BuiltSite {
  /** Its folder. */
  readonly folder: string;
  /** Its files, as paths from the folder with forward slashes, sorted. */
  readonly files: readonly string[];
}

/** The site of the small sound archive, with these files besides. */
export function smallSite(more: Files = {}): BuiltSite {
  return siteOf(async () => writeFolder({ ...(await soundFiles()), ...more }));
}

/** The site of the demonstration archive, each photograph stood in for by a small one. */
export function demoSite(): BuiltSite {
  return siteOf(async () => {
    const archive = await writeFolder({});
    for (const part of ["studio.yaml", "mark.svg", "pages", "recipes", "tiles"])
      await cp(join(project, part), join(archive, part), {
        recursive: true,
        filter: (path) => !/\.(avif|heic|jpe?g|png|tiff?|webp)$/iu.test(path),
      });
    await writeInto(archive, await standIns(join(archive, "tiles")));
    return archive;
  });
}

/** A photograph for every tile with a result, of a colour that its code decides. */
async function standIns(tiles: string): Promise<Files> {
  const files: Record<string, Uint8Array> = {};
  for (const file of await listFiles(tiles)) {
    if (!file.endsWith(".md") || !/^result:/mu.test(await readFile(join(tiles, file), "utf8")))
      continue;
    const hue = [...file].reduce((sum, letter) => (sum * 31 + letter.charCodeAt(0)) % 360, 7);
    files[`tiles/${file.slice(0, -3)}.jpg`] = await withCards(
      await photograph(`hsl(${hue}, 30%, 45%)`, 320, 240),
    );
  }
  return files;
}

/** Lays mid grey cards where the records of the demonstration say that they lie. */
function withCards(picture: Buffer): Promise<Buffer> {
  const card = (left: number, top: number) => ({
    input: { create: { width: 40, height: 22, channels: 3 as const, background: "#7a7a7a" } },
    left,
    top,
  });
  return sharp(picture)
    .composite([card(14, 211), card(6, 3)])
    .jpeg({ quality: 95 })
    .toBuffer();
}

function siteOf(makeArchive: () => Promise<string>): BuiltSite {
  const site = { folder: "", files: [] as string[] };
  let archive = "";
  beforeAll(async () => {
    archive = await makeArchive();
    site.folder = join(archive, "site");
    const code = await build({ archive, quiet: true });
    if (code !== 0) throw new Error(`The site could not be built: exit code ${code}`);
    site.files = await listFiles(site.folder);
  });
  afterAll(() => removeFolder(archive));
  return site;
}

/** The pages of a site. */
export function pagesOf({ files }: BuiltSite): readonly string[] {
  return files.filter((file) => file.endsWith(".html"));
}

/** Whether a page only leads on to another, as one for a tile's former code does. */
export async function leadsOn({ folder }: BuiltSite, page: string): Promise<boolean> {
  return (await readFile(join(folder, page), "utf8")).includes('http-equiv="refresh"');
}

/** One page of each kind, the longest of it; of an unlisted set's small site its wall and a tile. */
export async function pageOfEachKind(site: BuiltSite): Promise<readonly string[]> {
  const longest = new Map<string, { page: string; length: number }>();
  for (const page of pagesOf(site)) {
    const kind = kindOf(page);
    if (kind === undefined) continue;
    const { length } = await readFile(join(site.folder, page), "utf8");
    if (length > (longest.get(kind)?.length ?? 0)) longest.set(kind, { page, length });
  }
  return [...longest.values()].map(({ page }) => page).sort();
}

/** A page's kind: its folder, and whether it is the list, a tile that moved, or a cone's surface. */
function kindOf(page: string): string | undefined {
  if (page.startsWith("s/")) return /^s\/[^/]+\/(index|tiles)\b/u.exec(page)?.[1];
  const [name = "", ...folders] = page.split("/").reverse();
  if (folders.length === 0) return name;
  if (name === "index.html") return page;
  if (folders.includes("cones") && name.includes("-")) return "cones/with a surface";
  return folders.join("/");
}

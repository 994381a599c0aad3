/**
 * Renders photographs for a demonstration archive's tiles:
 *
 *     npx tsx src/demo/render-tiles.ts [--archive DIR] [CODE …]
 *
 * With codes, those tiles (CODE.before for one as it left its first glaze firing, CODE.detail and
 * CODE.back for the other pictures); without, every tile that came out of the kiln, whole or with a result,
 * and has no picture yet. Stopped half way, it goes on where it was. Neither the build nor the tests need it.
 */
import { renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { readArchive } from "../archive/read-archive.ts";
import { type Archive, findById, type Tile } from "../records/archive.ts";
import { planBack, planTile } from "./plan-from-record.ts";
import { renderDetail, renderPicture } from "./render-picture.ts";

async function main(): Promise<void> {
  const { values, positionals } = parseArgs({
    options: { archive: { type: "string", default: "." } },
    allowPositionals: true,
  });
  const { archive } = await readArchive(values.archive, { builtInMaterials: [] });
  if (!archive) throw new Error(`There is no studio.yaml that can be read in ${values.archive}.`);
  const wanted = positionals.length > 0 ? positionals : tilesWithoutPicture(archive);
  for (const [i, name] of wanted.entries()) {
    const { tile, role } = findWanted(archive, name);
    const file = join(values.archive, tile.file.replace(/\.md$/i, role ? `.${role}.jpg` : ".jpg"));
    writePicture(file, await renderRole(archive, tile, role));
    console.log(`${i + 1} of ${wanted.length}: ${file}`);
  }
}

const roles = ["before", "detail", "back"] as const;
type Role = (typeof roles)[number];

interface Wanted {
  readonly tile: Tile;
  /** The result's own picture where left out. */
  readonly role: Role | undefined;
}

function findWanted(archive: Archive, name: string): Wanted {
  const role = roles.find((ending) => name.endsWith(`.${ending}`));
  const code = role ? name.slice(0, -role.length - 1) : name;
  const tile = findById(archive.tiles, code);
  if (!tile) throw new Error(`There is no tile “${code}” in the archive.`);
  return { tile, role };
}

async function renderRole(archive: Archive, tile: Tile, role: Role | undefined): Promise<Buffer> {
  if (role === "before") return renderPicture(planTile(archive, tile, 1));
  const plan = planTile(archive, tile);
  if (role === "detail") return renderDetail(plan);
  return renderPicture(role === "back" ? planBack(plan) : plan);
}

function tilesWithoutPicture(archive: Archive): string[] {
  const missing = [...archive.tiles.values()].filter(
    (tile) =>
      (tile.stage === "fired" || tile.stage === "recorded" || tile.record.result) &&
      !tile.pictures.some((picture) => picture.role === "result"),
  );
  return missing.map((tile) => tile.id);
}

/** Writes a picture whole or not at all. */
function writePicture(file: string, picture: Buffer): void {
  const draft = `${file}.part`;
  writeFileSync(draft, picture);
  renameSync(draft, file);
}

await main();

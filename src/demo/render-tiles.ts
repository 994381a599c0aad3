/**
 * Renders photographs for a demonstration archive's tiles:
 *
 *     npx tsx src/demo/render-tiles.ts [--archive DIR] [CODE …]
 *
 * With codes, those tiles; without, every tile that came out of the kiln, whole or with a result,
 * and has no picture yet. Stopped half way, it goes on where it was. Neither the build nor the tests need it.
 */
import { renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { readArchive } from "../archive/read-archive.ts";
import { type Archive, findById, type Tile } from "../records/archive.ts";
import { planTile } from "./plan-from-record.ts";
import { renderPicture } from "./render-picture.ts";

async function main(): Promise<void> {
  const { values, positionals } = parseArgs({
    options: { archive: { type: "string", default: "." } },
    allowPositionals: true,
  });
  const { archive } = await readArchive(values.archive, { builtInMaterials: [] });
  if (!archive) throw new Error(`There is no studio.yaml that can be read in ${values.archive}.`);
  const tiles =
    positionals.length > 0 ? namedTiles(archive, positionals) : tilesWithoutPicture(archive);
  for (const [i, tile] of tiles.entries()) {
    const file = join(values.archive, tile.file.replace(/\.md$/i, ".jpg"));
    writePicture(file, await renderPicture(planTile(archive, tile)));
    console.log(`${i + 1} of ${tiles.length}: ${file}`);
  }
}

function namedTiles(archive: Archive, codes: readonly string[]): Tile[] {
  return codes.map((code) => {
    const tile = findById(archive.tiles, code);
    if (!tile) throw new Error(`There is no tile “${code}” in the archive.`);
    return tile;
  });
}

function tilesWithoutPicture(archive: Archive): Tile[] {
  return [...archive.tiles.values()].filter(
    (tile) =>
      (tile.stage === "fired" || tile.stage === "recorded" || tile.record.result) &&
      !tile.pictures.some((picture) => picture.role === "result"),
  );
}

/** Writes a picture whole or not at all. */
function writePicture(file: string, picture: Buffer): void {
  const draft = `${file}.part`;
  writeFileSync(draft, picture);
  renameSync(draft, file);
}

await main();

/** An archive that `new-archive` began. */
import { copyFile, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { photograph, writeInto } from "./archive-folder.ts";

/** Copies each example of a new archive to its place, with a photograph: an archive without a caution. */
export async function copyExamples(folder: string): Promise<void> {
  const places = {
    "set.md": "tiles/autumn/set.md",
    "tile.md": "tiles/autumn/AU-001.md",
    "firing.md": "tiles/firings/g-1012.md",
    "glaze-bought.md": "recipes/glazes/tidewrack.md",
    "glaze-mixed.md": "recipes/glazes/limestone-clear.md",
    "clay.md": "recipes/clays/buff-stoneware.md",
    "material.md": "recipes/materials/our-ash.md",
  };
  await writeInto(folder, { "tiles/autumn/AU-001.jpg": await photograph("#889988") });
  for (const [from, to] of Object.entries(places))
    await copyFile(join(folder, "examples", from), join(folder, to));
  await rewrite(join(folder, "tiles/autumn/AU-001.md"), (text) =>
    text.replaceAll(/^# ( *(result|surface|effects|faults|run|again|next-time):)/gmu, "$1"),
  );
  // The example of a mixed glaze is for cone 9, the load went to cone 6: its range would be noted.
  await rewrite(join(folder, "recipes/glazes/limestone-clear.md"), (text) =>
    text.replace("cones: 9-10", "cones: 5-6"),
  );
}

async function rewrite(file: string, change: (text: string) => string): Promise<void> {
  await writeFile(file, change(await readFile(file, "utf8")));
}

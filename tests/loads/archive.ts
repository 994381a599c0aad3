/** A small archive on no disk: two clays, three glazes, one kiln, and tiles that wait. */
import { textParser } from "../../src/archive/parse-text.ts";
import { carriedWords } from "../../src/chemistry/minerals/minerals.ts";
import type { TrialNeeds } from "../../src/loads/try-load.ts";
import { readArchiveFiles } from "../../src/reader/read-archive-files.ts";
import type { Archive } from "../../src/records/archive.ts";
import { typedCommand } from "../../src/terms/typed-command.ts";
import { filesOf, type Texts } from "../support/files-in-memory.ts";

/** A record of these lines. */
export function record(...lines: readonly string[]): string {
  return ["---", ...lines, "---", ""].join("\n");
}

export const base: Texts = {
  "studio.yaml": "format: 1\nstudio: Eelgate Pottery\n",
  "recipes/clays/buff.md": record("name: Buff stoneware", "cones: 5-9"),
  "recipes/clays/terracotta.md": record("name: Terracotta", "cones: 06-03"),
  "recipes/clays/found.md": record("name: Ditch clay"),
  "recipes/glazes/soot.md": record(
    "name: Soot",
    "kind: glaze",
    "bought: {maker: Oxbow}",
    "cones: 5-6",
  ),
  "recipes/glazes/slide.md": record(
    ...["name: Slide", "kind: glaze", "bought: {maker: Oxbow}", "cones: 5-6", "moves: runs"],
  ),
  "recipes/glazes/dusk.md": record("name: Dusk", "kind: glaze", "bought: {maker: Oxbow}"),
  "recipes/glazes/gilt.md": record(
    "name: Gilt",
    "kind: onglaze",
    "bought: {maker: Oxbow}",
    "cones: 018",
  ),
  "tiles/firings/g-261020.md": record(
    ...["on: 2026-10-20", "kind: glaze", "kiln: Big electric", "atmosphere: oxidation", "cone: 6"],
  ),
};

/** A tile of these layers after its bisque. */
export function tile(layers: string, ...more: readonly string[]): string {
  return record(`layers: [{fired: bisque}, ${layers}]`, ...more);
}

export function needsOf(texts: Texts): TrialNeeds {
  return {
    files: filesOf({ ...base, ...texts }),
    reader: { builtInMaterials: carriedWords, texts: textParser },
    asTyped: typedCommand({ program: "npx tilebook", shell: "posix", archive: null }),
  };
}

export function read(texts: Texts): Archive {
  const { files, reader } = needsOf(texts);
  const { archive } = readArchiveFiles(files, reader);
  if (!archive) throw new Error("The archive cannot be read");
  return archive;
}

import { mkdir, mkdtemp, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Findings } from "../../src/catalogue/findings.ts";
import { makeCatalogue } from "../../src/catalogue/make.ts";
import { chemistryOfGlazes } from "../../src/chemistry/glazes.ts";
import { carriedMaterials, theoreticalMaterials } from "../../src/chemistry/minerals/minerals.ts";
import { reworkGlaze } from "../../src/chemistry/rework-glaze.ts";
import { renderPage } from "../../src/publish/write-pages.ts";
import type { Archive } from "../../src/records/archive.ts";
import {
  archive,
  clay,
  coat,
  cone,
  cones,
  fired,
  firing,
  glaze,
  material,
  result,
  tile,
} from "../checks/support.ts";
import { spawnTilebook } from "../commands/tilebook.ts";
import { makeDataFiles } from "../support/data-files.ts";
import { listPages } from "../support/list-pages.ts";
import { removeFolder } from "../support/remove-folder.ts";

/**
 * Times what mixed glazes add to a build: the same archive with recipes and with jars in their
 * place, through chemistry, catalogue, data files and pages, in turns, of which the quickest counts;
 * and a rework on 150 materials, as the function and as the command with all of its start.
 */
const TARGETS = { added: 1000, rework: 1000 };
const RECIPES = 1000;
const MATERIALS = 150;
const TURNS = 5;

export async function run(): Promise<boolean> {
  const added = timeRecipes();
  const rework = await timeRework();
  return added < TARGETS.added && rework < TARGETS.rework;
}

function timeRecipes(): number {
  const mixed = archiveOf(true);
  const bought = archiveOf(false);
  publishAll(mixed);
  publishAll(bought);
  const times = Array.from({ length: TURNS }, () => [timed(mixed), timed(bought)] as const);
  const withRecipes = Math.min(...times.map(([recipes]) => recipes));
  const withJars = Math.min(...times.map(([, jars]) => jars));
  const added = withRecipes - withJars;
  console.log(
    `${RECIPES} glazes, each alone on two tiles, and ${RECIPES / 2} pairs: ${round(withRecipes)} with recipes, ${round(withJars)} with jars; recipes add ${round(added)} (target ${TARGETS.added} ms)`,
  );
  return added;
}

function timed(from: Archive): number {
  const begun = performance.now();
  publishAll(from);
  return performance.now() - begun;
}

function round(ms: number): string {
  return `${Math.round(ms)} ms`;
}

/** All that a build does with an archive but reading it, its pictures and the disk. */
function publishAll(from: Archive): number {
  const findings: Findings = {
    pictures: new Map(),
    chemistry: chemistryOfGlazes(from),
    heats: new Map(),
    notes: new Map(),
    builtInMaterials: carriedMaterials,
  };
  const catalogue = makeCatalogue(from, findings);
  const bytes = makeDataFiles(catalogue).reduce((sum, { content }) => sum + content.length, 0);
  return listPages(catalogue).reduce((sum, page) => sum + renderPage(page).length, bytes);
}

/** Materials as a studio has them: minerals under names of its own. */
function materialsOf(count: number) {
  const minerals = theoreticalMaterials.filter(({ role }) => role !== "lead" && role !== "lustre");
  return Array.from({ length: count }, (_, i) => {
    const mineral = minerals[i % minerals.length];
    return material(`m-${i}`, {
      name: `Material ${i}`,
      formula: mineral?.formula ?? "SiO2",
      price: 2,
    });
  });
}

/** Different recipes of seven materials, told apart by their parts. */
function recipeOf(i: number) {
  const base = ["potash-feldspar", "silica", "whiting", "kaolin"];
  const parts = [...base, ...[3, 7, 11].map((step) => `m-${(i * step) % MATERIALS}`)];
  const ingredients = parts.map((id, j) => ({ material: id, parts: 5 + ((i * (j + 3)) % 40) }));
  return { ingredients, additions: [{ material: "red-iron-oxide", parts: 1 + (i % 8) }] };
}

function archiveOf(isMixed: boolean): Archive {
  const glazes = Array.from({ length: RECIPES }, (_, i) =>
    glaze(`g-${i}`, {
      name: `Glaze ${i}`,
      cones: cones("5-7"),
      ...(isMixed ? recipeOf(i) : {}),
    }),
  );
  const clays = [6, 6.4, 6.8, 7.2].map((mean, i) =>
    clay(`c-${i}`, {
      name: `Clay ${i}`,
      cones: cones("4-8"),
      expansion: { mean, between: [20, 500] },
    }),
  );
  const tiles = glazes.flatMap(({ id }, i) => [
    tile(`A-${i}`, [coat(id), fired(`f-${i % 3}`)], { clay: `c-${i % 4}`, result: [result()] }),
    tile(`B-${i}`, [coat(id), fired(`f-${i % 3}`)], {
      clay: `c-${(i + 1) % 4}`,
      result: [result()],
    }),
    ...(i % 2 === 0
      ? [tile(`P-${i}`, [coat(id), coat(`g-${i + 1}`), fired("f-0")], { result: [result()] })]
      : []),
  ]);
  const firings = ["5", "6", "7"].map((name, i) => firing(`f-${i}`, { cone: cone(name) }));
  return archive({ glazes, clays, tiles, firings, materials: materialsOf(MATERIALS) });
}

async function timeRework(): Promise<number> {
  const stock = archive({ glazes: [glaze("g-1", recipeOf(1))], materials: materialsOf(MATERIALS) });
  const times = ["potash-feldspar", "silica", "whiting", "kaolin", "m-3"].map((without) => {
    const begun = performance.now();
    reworkGlaze(stock, "g-1", { without });
    return performance.now() - begun;
  });
  const command = await timeCommand();
  console.log(
    `A rework on ${MATERIALS} materials: ${round(Math.min(...times))} to ${round(Math.max(...times))}; as a command with its start ${round(command)} (target ${TARGETS.rework} ms)`,
  );
  return command;
}

/** The program from its start to its answer, the archive read before. */
async function timeCommand(): Promise<number> {
  const folder = await mkdtemp(join(tmpdir(), "tilebook-bench-"));
  try {
    await writeArchive(folder);
    const words = ["rework", "g-1", "--without", "whiting", "--archive", folder];
    await spawnTilebook(words);
    const times = [];
    for (let turn = 0; turn < TURNS; turn++) {
      const begun = performance.now();
      const { code, err } = await spawnTilebook(words);
      if (code !== 0) throw new Error(err);
      times.push(performance.now() - begun);
    }
    return Math.min(...times);
  } finally {
    await removeFolder(folder);
  }
}

async function writeArchive(folder: string): Promise<void> {
  for (const part of ["recipes/glazes", "recipes/materials", "tiles"])
    await mkdir(join(folder, part), { recursive: true });
  await writeFile(join(folder, "studio.yaml"), "format: 1\nstudio: Eelgate Pottery\n");
  await writeFile(join(folder, "tiles/A-1.md"), "---\nlayers: [{glaze: g-1}]\n---\n");
  for (const { id, record } of materialsOf(MATERIALS))
    await writeFile(
      join(folder, `recipes/materials/${id}.md`),
      `---\nname: ${record.name}\nformula: ${record.formula}\n---\n`,
    );
  const { ingredients, additions } = recipeOf(1);
  const lines = (of: typeof ingredients) =>
    of.map((portion) => `  - {material: ${portion.material}, parts: ${portion.parts}}`);
  const recipe = ["ingredients:", ...lines(ingredients), "additions:", ...lines(additions)];
  await writeFile(
    join(folder, "recipes/glazes/g-1.md"),
    ["---", "name: One", "kind: glaze", ...recipe, "---", ""].join("\n"),
  );
}

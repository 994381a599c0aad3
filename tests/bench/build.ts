/**
 * Times whole builds of archives on disk without pictures: cold, unchanged, and after one edit, beside
 * what somebody could have instead. `npm run bench -- build 1000` measures one size; without one, three.
 * Ratios last; seconds depend on the machine and on what else it does.
 */
import {
  appendFileSync,
  cpSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { writeLargeArchive } from "./archive-on-disk.ts";
import { measureRun, type Run } from "./measured-run.ts";
import { runYardsticks, type Yardstick } from "./yardsticks.ts";

const SIZES = [100, 1_000, 10_000];
/** Of Hugo and Pagefind in the same run; MiB; of Hugo and Pagefind at the largest size; seconds at 1,000. */
const TARGETS = { cold: 0.8, memory: 700, edit: 0.1, editSeconds: 1.5 };

const project = fileURLToPath(new URL("../../", import.meta.url));

interface Row {
  readonly name: string;
  readonly seconds: number;
  readonly busy: number;
  readonly memory: number | null;
  readonly said: string;
}

export async function run(sizes: readonly string[]): Promise<boolean> {
  const held = [];
  for (const tiles of sizes.length > 0 ? sizes.map(Number) : SIZES) held.push(await measure(tiles));
  return held.every(Boolean);
}

async function measure(tiles: number): Promise<boolean> {
  const folder = mkdtempSync(join(tmpdir(), "tilebook-bench-"));
  try {
    const archive = join(folder, "archive");
    writeLargeArchive(archive, tiles);
    const yardsticks = (await runYardsticks(archive, folder)).map(rowOf);
    const builds = await runBuilds(archive, copyProgram(folder));
    return tell(tiles, yardsticks, builds);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function rowOf({ name, runs }: Yardstick): Row {
  const sum = (of: (run: Run) => number) => runs.reduce((all, run) => all + of(run), 0);
  return {
    name,
    seconds: sum(({ seconds }) => seconds),
    busy: sum(({ busy }) => busy),
    memory: Math.max(...runs.map(({ memory }) => memory ?? 0)) || null,
    said: "",
  };
}

/** A copy of the sources, so that a template can be edited. */
function copyProgram(folder: string): string {
  const program = join(folder, "program");
  mkdirSync(program);
  for (const name of ["src", "templates", "package.json", "package-lock.json", "tsconfig.json"])
    cpSync(join(project, name), join(program, name), { recursive: true });
  symlinkSync(join(project, "node_modules"), join(program, "node_modules"));
  return program;
}

async function runBuilds(archive: string, program: string): Promise<readonly Row[]> {
  const build = async (name: string): Promise<Row> => ({
    name,
    ...(await measureRun(archive, process.execPath, join(program, "src/tilebook.mjs"), "build")),
  });
  // The first run of a checkout compiles it, which belongs to no build.
  await measureRun(archive, process.execPath, join(program, "src/tilebook.mjs"), "--version");
  const cold = await build("cold");
  const unchanged = await build("unchanged");
  appendFileSync(join(archive, "tiles/set-0/TB-00003.md"), "\nRan a little at the rim.\n");
  const tile = await build("one tile");
  const glaze = join(archive, "recipes/glazes/Glaze-5.md");
  writeFileSync(glaze, readFileSync(glaze, "utf8").replace("name: Glaze 5", "name: Glaze five"));
  const oneGlaze = await build("one glaze");
  appendFileSync(join(program, "templates/pages/tile-page.tsx"), "// edited\n");
  await measureRun(archive, process.execPath, join(program, "src/tilebook.mjs"), "--version");
  return [cold, unchanged, tile, oneGlaze, await build("one template")];
}

function tell(tiles: number, yardsticks: readonly Row[], builds: readonly Row[]): boolean {
  const [first] = yardsticks;
  const other = first?.name.startsWith("Hugo") ? first : undefined;
  console.log(`\n${tiles} tiles`);
  console.log(cells("", "seconds", "of Hugo", "busy", "of Hugo", "MiB", "ms a tile"));
  for (const row of [...yardsticks, ...builds]) console.log(tellRow(row, tiles, other));
  for (const { name, said } of builds) console.log(`${name}: ${stagesOf(said)}`);
  return other === undefined || holds(tiles, other, builds);
}

function tellRow({ name, seconds, busy, memory }: Row, tiles: number, other: Row | undefined) {
  return cells(
    name,
    seconds.toFixed(2),
    other ? (seconds / other.seconds).toFixed(2) : "",
    busy.toFixed(2),
    other ? (busy / other.busy).toFixed(2) : "",
    memory === null ? "" : memory.toFixed(0),
    ((1000 * seconds) / tiles).toFixed(2),
  );
}

function cells(name: string, ...rest: readonly string[]): string {
  return name.padEnd(16) + rest.map((cell) => cell.padStart(10)).join("");
}

function stagesOf(said: string): string {
  return said.trim().split("\n").at(-1) ?? "";
}

function holds(tiles: number, other: Row, builds: readonly Row[]): boolean {
  const [cold, unchanged, edit] = builds;
  if (!cold || !unchanged || !edit) return false;
  const isQuick =
    tiles > 1000
      ? edit.seconds <= TARGETS.edit * other.seconds
      : edit.seconds <= TARGETS.editSeconds;
  const met = {
    [`cold, ${TARGETS.cold} of Hugo and Pagefind`]: cold.seconds <= TARGETS.cold * other.seconds,
    [`memory, ${TARGETS.memory} MiB`]: (cold.memory ?? 0) <= TARGETS.memory,
    "one tile": isQuick,
    "unchanged, less than an edit": unchanged.seconds <= edit.seconds,
  };
  for (const [name, isMet] of Object.entries(met))
    console.log(`${isMet ? "met" : "NOT MET"}: ${name}`);
  return Object.values(met).every(Boolean);
}

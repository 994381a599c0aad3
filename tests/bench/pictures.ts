import { spawn } from "node:child_process";
import { mkdir, mkdtemp, readdir, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp from "sharp";
import { removeFolder } from "../support/remove-folder.ts";
import type { RunResult } from "./pictures-run.ts";

/**
 * Times this project's picture work (reading, checking, every size, judging, measuring colour,
 * remembering, placing) against a bare chain of the picture library that writes the same sizes and
 * nothing else, over the same twelve-megapixel photographs, in turns. Each turn runs in a process
 * of its own, so that its peak memory is known.
 */
const TARGETS = { time: 1.1, memory: 1.5 };
const PHOTOGRAPHS = 200;
const TURNS = 2;
const TILES = 8;

const WIDTH = 4000;
const HEIGHT = 3000;

export async function run([count]: string[]): Promise<boolean> {
  const photographs = Number(count ?? PHOTOGRAPHS);
  const folder = await mkdtemp(join(tmpdir(), "tilebook-bench-"));
  try {
    console.log(`Making ${photographs} photographs of ${WIDTH} by ${HEIGHT} pixels ...`);
    const paths = await makePhotographs(folder, photographs);
    return report(photographs, await takeTurns(folder, paths));
  } finally {
    await removeFolder(folder);
  }
}

/** Some tiles are painted; the photographs are of these, each with a remark of its own. */
async function makePhotographs(folder: string, count: number): Promise<string[]> {
  const tiles = await Promise.all(
    Array.from({ length: Math.min(TILES, count) }, (_, index) => paintPhotograph(index)),
  );
  const paths: string[] = [];
  for (let index = 0; index < count; index++) {
    const path = join(folder, `photo-${index}.jpg`);
    const tile = tiles[index % tiles.length] ?? Buffer.alloc(0);
    await writeFile(path, withRemark(tile, `photograph ${index}`));
    paths.push(path);
  }
  return paths;
}

async function paintPhotograph(index: number): Promise<Buffer> {
  const grain = await sharp({
    create: {
      width: WIDTH,
      height: HEIGHT,
      channels: 3,
      background: "#000",
      noise: { type: "gaussian", mean: 128, sigma: 22 },
    },
  })
    .blur(0.8)
    .png({ compressionLevel: 1 })
    .toBuffer();
  return sharp(Buffer.from(drawTile(index)))
    .flatten({ background: "#8f8d89" })
    .composite([{ input: grain, blend: "soft-light" }])
    .jpeg({ quality: 90 })
    .toBuffer();
}

function drawTile(index: number): string {
  const hue = index * 45;
  const specks = Array.from({ length: 500 }, (_, at) => {
    const [x, y] = [600 + ((at * 977) % 2800), 400 + ((at * 613) % 2200)];
    return `<circle cx="${x}" cy="${y}" r="${4 + (at % 30)}" fill="hsl(${hue + 40}, 35%, 40%)"/>`;
  });
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH}" height="${HEIGHT}">
    <rect x="600" y="400" width="2800" height="2200" rx="60" fill="hsl(${hue}, 30%, 50%)"/>
    ${specks.join("")}</svg>`;
}

/** A comment segment after the start of the image. */
function withRemark(jpeg: Buffer, remark: string): Buffer {
  const segment = Buffer.from(`\xff\xfe\0\0${remark}`, "latin1");
  segment.writeUInt16BE(remark.length + 2, 2);
  return Buffer.concat([jpeg.subarray(0, 2), segment, jpeg.subarray(2)]);
}

interface Totals {
  seconds: number;
  processorSeconds: number;
  peakMebibytes: number;
}

type Mode = "bare" | "tilebook";

async function takeTurns(folder: string, paths: string[]): Promise<Record<Mode, Totals>> {
  const totals: Record<Mode, Totals> = { bare: startTotals(), tilebook: startTotals() };
  for (let turn = 0; turn < TURNS; turn++) {
    const some = paths.filter((_, index) => index % TURNS === turn);
    const modes: Mode[] = turn % 2 === 0 ? ["bare", "tilebook"] : ["tilebook", "bare"];
    for (const mode of modes) {
      const outDir = join(folder, `${mode}-${turn}`);
      await mkdir(outDir);
      add(totals[mode], await runInProcess(mode, outDir, some));
    }
    await compareOutputs(folder, turn);
  }
  return totals;
}

function startTotals(): Totals {
  return { seconds: 0, processorSeconds: 0, peakMebibytes: 0 };
}

function add(totals: Totals, result: RunResult): void {
  totals.seconds += result.seconds;
  totals.processorSeconds += result.processorSeconds;
  totals.peakMebibytes = Math.max(totals.peakMebibytes, result.peakMebibytes);
}

async function runInProcess(mode: Mode, outDir: string, paths: string[]): Promise<RunResult> {
  const script = join(import.meta.dirname, "pictures-run.ts");
  const child = spawn(process.execPath, ["--import", "tsx", script, mode, outDir, ...paths], {
    stdio: ["ignore", "pipe", "inherit"],
  });
  let output = "";
  for await (const text of child.stdout) output += text;
  return JSON.parse(output);
}

/** Both must have written as many pictures, or the comparison means nothing. */
async function compareOutputs(folder: string, turn: number): Promise<void> {
  const count = async (mode: Mode) => (await readdir(join(folder, `${mode}-${turn}`))).length;
  const [bare, tilebook] = [await count("bare"), await count("tilebook")];
  if (bare !== tilebook) throw new Error(`bare wrote ${bare} pictures, Tilebook ${tilebook}`);
}

function report(photographs: number, { bare, tilebook }: Record<Mode, Totals>): boolean {
  const time = tilebook.seconds / bare.seconds;
  const memory = tilebook.peakMebibytes / bare.peakMebibytes;
  console.table({
    "bare chain": describe(bare, photographs),
    Tilebook: describe(tilebook, photographs),
  });
  console.log(`Time: ${time.toFixed(2)} of the bare chain's (at most ${TARGETS.time}).`);
  console.log(`Memory: ${memory.toFixed(2)} of the bare chain's (at most ${TARGETS.memory}).`);
  return time <= TARGETS.time && memory <= TARGETS.memory;
}

function describe({ seconds, processorSeconds, peakMebibytes }: Totals, photographs: number) {
  return {
    seconds: Number(seconds.toFixed(1)),
    "processor ms a picture": Math.round((1000 * processorSeconds) / photographs),
    "peak MiB": Math.round(peakMebibytes),
  };
}

/**
 * Times `tilebook serve` as somebody has it who writes a record with its page open beside: from the save
 * to the new page in a browser. `npm run bench -- serve 1000` measures one size; without one, two.
 */
import { spawn } from "node:child_process";
import { appendFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout } from "node:timers/promises";
import { chromium, type Page } from "playwright-core";
import { project } from "../house/files.ts";
import { findBrowser } from "../support/find-browser.ts";
import { writeLargeArchive } from "./archive-on-disk.ts";

const sizes = [168, 1000];

/** Seconds from a save to the new page at the largest size. */
const target = 1;
const edits = 9;
const port = 18_080;

export async function run(asked: readonly string[]): Promise<boolean> {
  const met = [];
  for (const tiles of asked.length > 0 ? asked.map(Number) : sizes) met.push(await measure(tiles));
  return met.every(Boolean);
}

async function measure(tiles: number): Promise<boolean> {
  const archive = mkdtempSync(join(tmpdir(), "tilebook-bench-"));
  writeLargeArchive(archive, tiles);
  const served = await startServing(archive);
  const browser = await chromium.launch({ executablePath: findBrowser().path });
  try {
    const page = await browser.newPage();
    await page.goto(`http://localhost:${port}/tiles/tb-00003.html`);
    const file = join(archive, "tiles/set-0/TB-00003.md");
    const times = await editOften(page, file, served);
    const [told, mended] = await breakAndMend(page, file);
    console.log(`\n${tiles} tiles, ${edits} edits, two seconds after each other`);
    console.log(`from the start to the first page: ${served.first.toFixed(2)} s`);
    console.log(`from a save to the new page: ${spread(times.map(({ seconds }) => seconds))}`);
    console.log(`of the processor until then: ${spread(times.map(({ busy }) => busy))}`);
    console.log(
      `from a save to the fault on the page: ${told.toFixed(2)} s; mended: ${mended.toFixed(2)} s`,
    );
    return middle(times.map(({ seconds }) => seconds)) <= target;
  } catch (error) {
    console.error(served.said());
    throw error;
  } finally {
    await browser.close();
    await served.stop();
    rmSync(archive, { recursive: true, force: true });
  }
}

interface Served {
  /** What the program said on standard error. */
  readonly said: () => string;
  /** Seconds from its start until there was something to see. */
  readonly first: number;
  /** Seconds that the processor spent on it so far. */
  readonly busy: () => number;
  readonly stop: () => Promise<unknown>;
}

async function startServing(archive: string): Promise<Served> {
  const program = join(project, "src/tilebook.mjs");
  const words = [program, "serve", "--archive", archive, "--port", String(port)];
  const begun = performance.now();
  const child = spawn(process.execPath, words, { stdio: ["ignore", "ignore", "pipe"] });
  const ended = new Promise((resolve) => child.once("close", resolve));
  let said = "";
  child.stderr.on("data", (part) => {
    said += part;
  });
  const untilSaid = async (words: string) => {
    while (!said.includes(words)) {
      if (child.exitCode !== null || said.includes("Mend the faults")) throw new Error(said);
      await setTimeout(10);
    }
  };
  await untilSaid("The catalogue is at");
  const first = secondsSince(begun);
  await untilSaid("put the site in place ");
  const stop = () => {
    child.kill("SIGINT");
    return ended;
  };
  return { said: () => said, first, busy: () => busyOf(child.pid ?? 0), stop };
}

async function editOften(page: Page, file: string, { busy }: Served) {
  const times: { readonly seconds: number; readonly busy: number }[] = [];
  for (let i = 0; i < edits; i += 1) {
    await setTimeout(2000);
    const [begun, before] = [performance.now(), busy()];
    appendFileSync(file, `\nSeen ${i} times.\n`);
    await page.getByText(`Seen ${i} times.`).waitFor();
    times.push({ seconds: secondsSince(begun), busy: busy() - before });
  }
  return times;
}

async function breakAndMend(page: Page, file: string): Promise<[told: number, mended: number]> {
  const sound = readFileSync(file, "utf8");
  const strip = page.locator(".trouble-strip");
  let begun = performance.now();
  writeFileSync(file, sound.replace("---", "---\nlayer: soot"));
  await strip.waitFor();
  const told = secondsSince(begun);
  begun = performance.now();
  writeFileSync(file, `${sound}\nWhole again.\n`);
  await page.getByText("Whole again.").waitFor();
  return [told, secondsSince(begun)];
}

function secondsSince(begun: number): number {
  return (performance.now() - begun) / 1000;
}

/** 0 where the system has no `/proc`. */
function busyOf(process: number): number {
  try {
    const fields =
      readFileSync(`/proc/${process}/stat`, "utf8").split(") ").at(-1)?.split(" ") ?? [];
    return (Number(fields[11]) + Number(fields[12])) / 100;
  } catch {
    return 0;
  }
}

function middle(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
}

function spread(values: readonly number[]): string {
  const [least, most] = [Math.min(...values), Math.max(...values)];
  return `${middle(values).toFixed(2)} s in the middle, ${least.toFixed(2)} to ${most.toFixed(2)}`;
}

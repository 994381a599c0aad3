/**
 * What the data files cost, made from archives in memory: processor time and bytes of each kind, and how
 * much memory the process held at most. One size in a process of its own: `npm run bench -- data 1000`.
 */
import { dataRowsOf } from "../../src/publish/data/data-rows.ts";
import { dataEntriesOf } from "../../src/publish/data/files.ts";
import { openWriters } from "../../src/publish/data/writers.ts";
import { catalogueOf } from "./catalogue-run.ts";
import { makeLargeArchive } from "./large-archive.ts";

/** Seconds of processor time for a thousand tiles. */
const target = 1;

export async function run(args: string[]): Promise<boolean> {
  const tiles = Number(args[0] ?? 1000);
  const catalogue = catalogueOf(makeLargeArchive(tiles));
  const before = memory();
  console.log(`${tiles} tiles:`);
  await timed("rows", async () => void dataRowsOf(catalogue));
  await timed("loading the writers", openWriters);
  let all = 0;
  for (const ending of ["json", "csv", "parquet", "sqlite"]) {
    const entries = dataEntriesOf(catalogue).filter(({ path }) => path.endsWith(`.${ending}`));
    let bytes = 0;
    const seconds = await timed(ending, async () => {
      for (const entry of entries) bytes += Buffer.byteLength(await entry.make());
    });
    if (ending !== "json") all += seconds;
    console.log(`  ${entries.length} files, ${Math.round(bytes / 1024)} KB`);
  }
  console.log(`memory ${before} MiB before, ${memory()} MiB at most`);
  console.log(`CSV, Parquet and SQLite together: ${all.toFixed(2)} s`);
  return all <= (target * tiles) / 1000;
}

async function timed(what: string, work: () => Promise<unknown>): Promise<number> {
  const begun = process.cpuUsage();
  await work();
  const { user, system } = process.cpuUsage(begun);
  const seconds = (user + system) / 1e6;
  console.log(`${what}: ${seconds.toFixed(2)} s`);
  return seconds;
}

function memory(): number {
  return Math.round(process.resourceUsage().maxRSS / 1024);
}

import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { folderFiles } from "../../src/archive/folder-files.ts";
import { textParser } from "../../src/archive/parse-text.ts";
import { splitRecord } from "../../src/archive/split-record.ts";
import { carriedWords } from "../../src/chemistry/minerals/minerals.ts";
import { parseAnyYaml } from "../../src/reader/parse-yaml.ts";
import type { Form, ParsedText, TextParser } from "../../src/reader/parsed-text.ts";
import { readArchiveFiles } from "../../src/reader/read-archive-files.ts";
import { writeLargeArchive } from "./archive-on-disk.ts";

/**
 * Times how archives of 1,000 and of 10,000 tiles are read from disk, in processor time, beside the
 * same with the YAML parser for every record. The quickest of some turns of each counts.
 */
const targets = { share: 0.6, growth: 1.25 };
const sizes = [1_000, 10_000];
const turns = 3;

const parserAlone: TextParser = { parse: parseByParser, yamlOf: textParser.yamlOf };

function parseByParser(text: string, form: Form): ParsedText {
  if (form === "yaml") return { ...parseAnyYaml(text), notes: "" };
  const split = splitRecord(text);
  if (!split.ok) return { source: null, notes: "", blanks: [], faults: [split.fault] };
  return { ...parseAnyYaml(split.yaml), notes: split.notes };
}

export async function run(): Promise<boolean> {
  const measured = sizes.map((tiles) => ({ tiles, ...timeBoth(tiles) }));
  console.log("Processor time in milliseconds");
  console.log(["tiles", "parser alone", "as it is", "share"].map((it) => it.padStart(14)).join(""));
  for (const { tiles, before, now } of measured)
    console.log(
      [String(tiles), before.toFixed(0), now.toFixed(0), (now / before).toFixed(2)]
        .map((it) => it.padStart(14))
        .join(""),
    );
  const [small, large] = measured;
  if (!small || !large) return false;
  const growth = large.now / large.tiles / (small.now / small.tiles);
  console.log(`A tile costs ${growth.toFixed(2)} times as much (target ${targets.growth})`);
  return growth <= targets.growth && large.now / large.before <= targets.share;
}

function timeBoth(tiles: number): { readonly before: number; readonly now: number } {
  const folder = mkdtempSync(join(tmpdir(), "tilebook-reading-"));
  try {
    writeLargeArchive(folder, tiles);
    const times = Array.from({ length: turns }, () => ({
      before: timeReading(folder, parserAlone),
      now: timeReading(folder, textParser),
    }));
    return {
      before: Math.min(...times.map(({ before }) => before)),
      now: Math.min(...times.map(({ now }) => now)),
    };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function timeReading(folder: string, texts: TextParser): number {
  const begun = process.cpuUsage();
  const { archive } = readArchiveFiles(folderFiles(folder), {
    builtInMaterials: carriedWords,
    texts,
  });
  const { user, system } = process.cpuUsage(begun);
  if (!archive) throw new Error("The archive could not be read.");
  return (user + system) / 1000;
}

/** Small archives for tests: written to a folder of their own, read, and reported as text. */
import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import { onTestFinished } from "vitest";
import { readArchive } from "../../src/archive/read-archive.ts";
import type { ReadArchive } from "../../src/reader/read-archive-files.ts";
import type { Archive } from "../../src/records/archive.ts";
import { reportAs } from "../../src/reporting/report.ts";
import { removeFolderNow } from "../support/remove-folder.ts";

export type Files = Readonly<Record<string, string | Uint8Array>>;

/** The least an archive may be, without a fault. */
export const least: Files = {
  "studio.yaml": "format: 1\nstudio: Weir Lane Pottery\nmakers: {m01: {}}\n",
  "recipes/glazes/soot.md": record("name: Soot\nkind: glaze\nbought: {maker: Oxbow}"),
  "recipes/clays/buff.md": record("name: Buff"),
  "tiles/WL-001.md": record("layers:\n  - glaze: soot"),
};

const builtInMaterials = ["potash-feldspar", "red-iron-oxide", "silica", "whiting"];

/** A record's file: its fields between two lines of `---`, and its notes. */
export function record(yaml: string, notes = ""): string {
  return `---\n${yaml}\n---\n${notes}`;
}

/** An empty folder that goes away when the test is over. */
export function temporaryFolder(): string {
  const dir = fs.mkdtempSync(path.join(os.tmpdir(), "archive-"));
  onTestFinished(() => removeFolderNow(dir));
  return dir;
}

/** Writes files into a folder. */
export function writeFiles(dir: string, files: Files): void {
  for (const [file, content] of Object.entries(files)) {
    fs.mkdirSync(path.dirname(path.join(dir, file)), { recursive: true });
    fs.writeFileSync(path.join(dir, file), content);
  }
}

/** Reads an archive as the commands do. */
export function read(dir: string): Promise<ReadArchive> {
  return readArchive(dir, { builtInMaterials });
}

/** Reads the least archive with some files added or replaced. */
export function readWith(files: Files): Promise<ReadArchive> {
  const dir = temporaryFolder();
  writeFiles(dir, { ...least, ...files });
  return read(dir);
}

/** What a person is told of an archive, the count of what was read left out. */
export function tell({ problems, locate, counts }: ReadArchive): string {
  const report = reportAs("text", problems.map(locate), counts);
  return `\n${report.slice(0, report.lastIndexOf("\n\nRead "))}\n`.replace(/^\nRead .*\n/u, "\n");
}

/** What a person is told of the least archive with some files added or replaced. */
export async function tellOf(files: Files): Promise<string> {
  return tell(await readWith(files));
}

/** The archive, of which the test says that it is sound. */
export function sound({ archive, problems, locate, counts }: ReadArchive): Archive {
  if (!archive || problems.length > 0)
    throw new Error(reportAs("text", problems.map(locate), counts));
  return archive;
}

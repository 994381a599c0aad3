/** A site as one file to hand on: the same site gives the same bytes, on every computer. */
import fs from "node:fs";
import path from "node:path";
import { Zip, ZipDeflate } from "fflate";
import { inTurns } from "./turns.ts";

/** Every entry has this day: when a site was made is no part of it. */
const day = new Date(1980, 0, 1);

/** A plain zip counts its files and its bytes no further. */
const [mostFiles, mostBytes] = [65_534, 2 ** 32 - 2 ** 24];

/** Why a site cannot be put into a zip. */
export class TooLargeForZip extends Error {
  override readonly name = "TooLargeForZip";
}

/**
 * Writes a site's files into a zip, in a folder of their own in it. The zip is made beside its place
 * and renamed, so that nobody finds half of one.
 *
 * @param site the folder, which holds nothing but what a build wrote
 * @param zip the file
 * @param top the name of the folder in the zip
 * @returns how many bytes it has
 * @throws TooLargeForZip, and what the system says where it cannot be written
 */
export async function zipSite(site: string, zip: string, top: string): Promise<number> {
  const files = listFiles(site);
  const bytes = files.reduce((sum, file) => sum + fs.statSync(path.join(site, file)).size, 0);
  if (files.length > mostFiles || bytes > mostBytes) throw new TooLargeForZip();
  const beside = `${zip}.tmp`;
  try {
    await writeZip(beside, files, (file) => ({
      name: `${top}/${file}`,
      content: fs.readFileSync(path.join(site, file)),
    }));
    fs.renameSync(beside, zip);
  } finally {
    fs.rmSync(beside, { force: true });
  }
  return fs.statSync(zip).size;
}

/** All but the marks that a build leaves for itself, whose names begin with a full stop. */
function listFiles(site: string): readonly string[] {
  return fs
    .readdirSync(site, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(site, path.join(entry.parentPath, entry.name)))
    .map((file) => file.split(path.sep).join("/"))
    .filter((file) => !file.startsWith("."))
    .sort();
}

async function writeZip(
  place: string,
  files: readonly string[],
  read: (file: string) => { readonly name: string; readonly content: Uint8Array },
): Promise<void> {
  const opened = fs.openSync(place, "w");
  try {
    const zip = new Zip((error, chunk) => {
      if (error) throw error;
      fs.writeSync(opened, chunk);
    });
    await inTurns(files, (file) => {
      const { name, content } = read(file);
      // Pictures are packed already.
      const level = /\.(jpe?g|png|webp|woff2)$/u.test(name) ? 0 : 6;
      const entry = new ZipDeflate(name, { level });
      entry.mtime = day;
      zip.add(entry);
      entry.push(content, true);
    });
    zip.end();
  } finally {
    fs.closeSync(opened);
  }
}

/** Finds what was handed in: zips, folders, and files named one by one. */
import fs from "node:fs";
import path from "node:path";
import { readZip } from "../../archive/read-zip.ts";
import { onMachine } from "../../disk/machine-error.ts";
import type { Contents } from "../../reader/archive-files.ts";
import { isMarkdown, isPicture } from "../../reader/found-files.ts";
import { isPassedOver } from "../../reader/passed-over.ts";
import type { HandedFile, HandIn, Refusal } from "../../receive/hand-in.ts";
import {
  largestPicture,
  largestRecord,
  largestSpreadsheet,
  mostZipEntries,
} from "../../terms/limits.ts";
import { WrongUsage } from "../failure.ts";

export interface HandedIn {
  readonly handIns: readonly HandIn[];
  readonly refusals: readonly Refusal[];
}

/**
 * Opens what was named on the command line.
 *
 * @throws WrongUsage where something of that name is not there, MachineError where it cannot be read
 */
export async function openHandedIn(names: readonly string[]): Promise<HandedIn> {
  const handIns: HandIn[] = [];
  const refusals: Refusal[] = [];
  const single: HandedFile[] = [];
  for (const name of names) {
    const found = fs.statSync(name, { throwIfNoEntry: false });
    if (!found) throw new WrongUsage(`There is no file or folder ${name}. Nothing was changed.`);
    if (found.isDirectory()) await openFolder(name, handIns, refusals);
    else if (isZip(name)) await openZip(name, handIns, refusals);
    else if (isSheet(name)) handIns.push(openSheet(name));
    else single.push({ path: name.split(path.sep).join("/"), read: () => readFile(name) });
  }
  if (single.length > 0) handIns.push(sorted("", single, refusals));
  return { handIns, refusals };
}

function isZip(name: string): boolean {
  return /\.zip$/iu.test(name);
}

/** Whether a file is a spreadsheet's, told by its name. */
export function isSheet(name: string): boolean {
  return /\.(csv|tsv)$/iu.test(name);
}

/** The most bytes that are read of a file; 0 for one that nothing is known to do with. */
function largestOf(file: string): number {
  if (isMarkdown(file)) return largestRecord;
  if (isPicture(file)) return largestPicture;
  return isSheet(file) ? largestSpreadsheet : 0;
}

function readFile(file: string): Contents {
  const { size } = onMachine("read", file, () => fs.statSync(file));
  if (size > largestOf(file)) return { tooLarge: size };
  return { bytes: onMachine("read", file, () => fs.readFileSync(file)) };
}

/** What can be received of some files; what cannot is told. */
function sorted(name: string, files: readonly HandedFile[], refusals: Refusal[]): HandIn {
  const kept = files.filter(({ path: file }) => {
    if (isLitter(file)) return false;
    const why = whyNotReceived(file);
    if (why !== undefined) refusals.push({ what: name === "" ? file : `${name}: ${file}`, why });
    return why === undefined;
  });
  return { name, files: kept.toSorted((a, b) => (a.path < b.path ? -1 : 1)) };
}

function isLitter(file: string): boolean {
  return file.split("/").some((part) => isPassedOver(part) || part === "__MACOSX");
}

function whyNotReceived(file: string): string | undefined {
  if (largestOf(file) > 0) return undefined;
  if (isZip(file))
    return "It is a zip inside a zip, and is not opened. Unpack the outer one, and receive what comes out.";
  if (/\.(xlsx?|ods|numbers)$/iu.test(file))
    return "It is a spreadsheet in a form of its own. Export it as CSV, and receive that.";
  return "It is neither a record (.md), nor a photograph, nor a spreadsheet's CSV.";
}

async function openZip(name: string, handIns: HandIn[], refusals: Refusal[]): Promise<void> {
  const read = await readZip(name, largestOf);
  if (!read.ok) {
    const why = `${read.fault.message} Nothing of it was taken. ${read.fault.hint}`;
    refusals.push({ what: path.basename(name), why });
    return;
  }
  const files = read.files.map(({ path: file, contents }) => ({
    path: file,
    read: () => contents,
  }));
  handIns.push(sorted(path.basename(name), files, refusals));
}

/** A folder's own files are one hand-in, and every zip in it is one of its own. */
async function openFolder(dir: string, handIns: HandIn[], refusals: Refusal[]): Promise<void> {
  const files = listFolder(dir, refusals);
  if (files.length > mostZipEntries) {
    const why = `It holds more than ${mostZipEntries} files, so nothing of it was taken. Name the folders of one class.`;
    refusals.push({ what: dir, why });
    return;
  }
  if (files.length === 0) refusals.push({ what: dir, why: "There is no tile in it." });
  const own = files
    .filter((file) => !isZip(file))
    .map((file) => ({ path: file, read: () => readFile(path.join(dir, file)) }));
  // The folder's own name may be a set's.
  const name = path.basename(path.resolve(dir));
  handIns.push(
    sorted(
      "",
      own.map((file) => ({ ...file, path: `${name}/${file.path}` })),
      refusals,
    ),
  );
  for (const file of files.filter(isZip)) await openZip(path.join(dir, file), handIns, refusals);
}

/** Every file beneath a folder, relative to it; links are not followed. */
function listFolder(dir: string, refusals: Refusal[], below = ""): readonly string[] {
  const absolute = path.join(dir, below);
  const entries = onMachine("list", absolute, () =>
    fs.readdirSync(absolute, { withFileTypes: true }),
  );
  const files: string[] = [];
  for (const entry of entries.toSorted((a, b) => (a.name < b.name ? -1 : 1))) {
    const file = below === "" ? entry.name : `${below}/${entry.name}`;
    if (isPassedOver(entry.name) || files.length > mostZipEntries) continue;
    if (entry.isDirectory()) files.push(...listFolder(dir, refusals, file));
    else if (entry.isFile()) files.push(file);
    else {
      const why = "It is a link, and links are not followed. Put the file itself in its place.";
      refusals.push({ what: path.join(dir, file), why });
    }
  }
  return files;
}

/** A spreadsheet, with the photographs that lie in its folder. */
function openSheet(name: string): HandIn {
  const dir = path.dirname(name);
  const beside = onMachine("list", dir, () => fs.readdirSync(dir)).filter(isPicture);
  return {
    name: "",
    files: [
      { path: path.basename(name), read: () => readFile(name) },
      ...beside.sort().map((file) => ({
        ...{ path: file, isBeside: true },
        read: () => readFile(path.join(dir, file)),
      })),
    ],
  };
}

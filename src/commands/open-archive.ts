/** Reads an archive's records for a command that works on some of them. */
import { readArchive } from "../archive/read-archive.ts";
import { carriedWords } from "../chemistry/minerals/minerals.ts";
import type { ReadArchive } from "../reader/read-archive-files.ts";
import type { Archive, Filed } from "../records/archive.ts";
import { findById } from "../records/archive.ts";
import { findNearest } from "../records/suggest.ts";
import { reportAs } from "../reporting/report.ts";
import { idKey } from "../terms/ids.ts";
import { WrongUsage } from "./failure.ts";

/**
 * Reads the records of an archive. Errors in what the command works on are told on standard
 * error; those elsewhere are left to `check`.
 *
 * @param isInTheWay whether an error in a file, by its path in the archive, is in the way
 * @returns undefined where there is such an error
 */
export async function openArchive(
  dir: string,
  isInTheWay: (file: string) => boolean,
): Promise<Archive | undefined> {
  return (await openWhole(dir, isInTheWay))?.archive;
}

/** As `openArchive`, with what was found on the way: files, their texts and places. */
export async function openWhole(
  dir: string,
  isInTheWay: (file: string) => boolean,
): Promise<(ReadArchive & { readonly archive: Archive }) | undefined> {
  const read = await readArchive(dir, {
    builtInMaterials: carriedWords,
  });
  const errors = read.problems.filter(({ severity }) => severity === "error");
  const inTheWay = errors.filter(({ file }) => isInTheWay(file));
  const { archive } = read;
  if (archive && inTheWay.length === 0) return { ...read, archive };
  const told = (archive ? inTheWay : errors).map(read.locate);
  console.error(reportAs("text", told, read.counts));
  return undefined;
}

/** Whether a file of an archive lies in one of its folders, however the folder's name is written. */
export function liesIn(folder: string, file: string): boolean {
  return idKey(file).startsWith(`${folder}/`);
}

/** A record that a person named by its id on the command line. */
export function findNamed<T extends { readonly name: string }>(
  records: ReadonlyMap<string, Filed<T>>,
  written: string,
  what: "clay" | "glaze",
): Filed<T> {
  const found = findById(records, written);
  if (found) return found;
  const named = [...records.values()].map(({ id, record }) => ({ id, name: record.name }));
  throw new WrongUsage(unknown(written, what, named));
}

/** Says that there is no such thing, and what was probably meant: by its id, or by its name. */
export function unknown(
  written: string,
  what: string,
  known: readonly { readonly id: string; readonly name: string }[],
): string {
  const near = findNearest(
    written,
    known.flatMap(({ id, name }) => [id, name]),
  );
  const meant = known.find(({ id, name }) => near !== undefined && (id === near || name === near));
  const none = `There is no ${what} “${written}” in this archive.`;
  if (!meant) return known.length > 0 ? none : `${none} It holds no ${what} at all.`;
  const called = meant.id === near ? "" : `, the id of “${meant.name}”`;
  return `${none} Did you mean “${meant.id}”${called}?`;
}

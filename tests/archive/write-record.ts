/** Writing fields into a record that lies in a folder of its own, and what became of it. */
import fs from "node:fs";
import path from "node:path";
import { type RecordToWrite, writeFields } from "../../src/archive/write-fields.ts";
import { temporaryFolder, writeFiles } from "./archives.ts";

export type Fields = Parameters<typeof writeFields>[2];

/** What became of a file, and what it holds then. */
export function write(
  kind: RecordToWrite["kind"],
  before: string,
  fields: Fields,
  asRead?: string,
) {
  const dir = temporaryFolder();
  const file = kind === "studio" ? "studio.yaml" : "tiles/evening/a.md";
  writeFiles(dir, { [file]: before });
  const read = asRead ?? before.replace(/^\uFEFF/u, "").replaceAll("\r\n", "\n");
  const result = writeFields(dir, { file, kind, asRead: read }, fields);
  return { result, dir, file, after: fs.readFileSync(path.join(dir, file), "utf8") };
}

/** Whether all of `some` stand among `all`, in their order. */
export function isLeftOf(some: readonly string[], all: readonly string[]): boolean {
  let at = 0;
  for (const each of all) if (each === some[at]) at += 1;
  return at === some.length;
}

export function commentsOf(text: string): readonly string[] {
  return [...text.matchAll(/(?<=\s)#[^\r\n]*/gu)].map(([words]) => words);
}

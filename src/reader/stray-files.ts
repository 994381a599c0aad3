/**
 * Files that are read by nobody, told by their names. What could be a record is an
 * error: a tile that goes missing without a word is worse than a build that stops.
 */
import type { Problem } from "../records/problem.ts";
import { idKey } from "../terms/ids.ts";
import { largestRecord } from "../terms/limits.ts";
import type { ArchiveFiles } from "./archive-files.ts";
import { decodeRecord } from "./decode-text.ts";
import { problemOfFile } from "./problem-of-file.ts";

/** A file, and what lies in its folder. */
export interface Stray {
  readonly folder: string;
  readonly name: string;
  readonly files: readonly string[];
}

/** Endings that an editor adds to a record's own, or writes in its place. */
const asEditorsSave = /(?:\.md)?\.(?:md|markdown|mkdn?|mdown|txt|text)$/iu;

const wordProcessor = /(?:\.md)?\.(?:docx?|odt|pages|rtf|wps)$/iu;

/** What a file that could be a record is told; undefined for one that could not. */
export function strayRecord(archive: ArchiveFiles, stray: Stray): Problem | undefined {
  const { folder, name } = stray;
  if (wordProcessor.test(name)) return fromWordProcessor(stray);
  const target = recordNameOf(name);
  if (target === undefined) return undefined;
  const file = `${folder}/${name}`;
  if (stray.files.some((other) => idKey(other) === idKey(target)))
    return besideRecord(file, target);
  const isRecord = /\.md\.|\.m(?:ark)?do?w?n$/iu.test(name) || beginsAsRecord(archive, file);
  const problem = problemOfFile(file, {
    code: "record-not-read",
    message: `“${name}” is not read: a record's name ends in “.md”`,
    hint: isRecord
      ? `Rename it to “${target}”; to see the whole name, let your computer show the endings of files.`
      : `Rename it to “${target}” if it is a record; keep other texts outside of tiles/ and recipes/.`,
  });
  if (!isRecord) return problem;
  return {
    ...problem,
    mend: { does: "rename", renamings: [{ from: file, to: `${folder}/${target}` }] },
  };
}

/** The name that a text was meant to have as a record; undefined where it has that name or is no text. */
export function recordNameOf(name: string): string | undefined {
  const stem = name.replace(asEditorsSave, "");
  if (stem === name || stem === "" || name.length - stem.length === ".md".length) return undefined;
  return `${stem}.md`;
}

function beginsAsRecord(archive: ArchiveFiles, file: string): boolean {
  return /^---[ \t]*\n/u.test(decodeRecord(archive.read(file, largestRecord)).text);
}

function besideRecord(file: string, target: string): Problem {
  return problemOfFile(file, {
    code: "record-not-read",
    message: `“${file}” is not read, and there is a “${target}” beside it`,
    hint: "Compare the two, keep what is right in the one that ends in “.md”, and take the other out.",
  });
}

function fromWordProcessor({ folder, name }: Stray): Problem {
  const target = name.replace(wordProcessor, ".md");
  return problemOfFile(`${folder}/${name}`, {
    code: "record-not-read",
    message: `“${name}” was saved by a word processor, and cannot be read`,
    hint: `Open it, save it as plain text (UTF-8) with the name “${target}”, and take this file out.`,
  });
}

/** A file without an ending: nothing tells what it is. */
export function strayWithoutEnding({ folder, name }: Stray): Problem | undefined {
  if (name.slice(1).includes(".")) return undefined;
  return problemOfFile(`${folder}/${name}`, {
    code: "file-without-ending",
    message: `“${name}” has no ending, so nothing tells whether it is a record or a photograph`,
    hint: "Give it one, “.md” for a record or “.jpg” for a photograph, or take it out of the archive.",
  });
}

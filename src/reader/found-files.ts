/** What is found in an archive's folders. */
import type { Problem } from "../records/problem.ts";
import type { ArchiveFiles } from "./archive-files.ts";
import { problemOfFile } from "./problem-of-file.ts";
import { recordNameOf, type Stray, strayRecord, strayWithoutEnding } from "./stray-files.ts";

export const kindsOfRecord = [
  "set",
  "tile",
  "firing",
  "glaze",
  "clay",
  "material",
  "page",
] as const;
export type KindOfRecord = (typeof kindsOfRecord)[number];

/** A Markdown file with one record in it. */
export interface RecordFile {
  readonly kind: KindOfRecord;
  /** The file's stem (a set's: its folder's name), in Unicode's composed form. */
  readonly id: string;
  /** Relative to the archive, with `/`, spelt as the disk spells it. */
  readonly file: string;
  readonly folder: string;
}

/** Any other file that belongs to a record. */
export interface OtherFile {
  readonly file: string;
  readonly folder: string;
  readonly name: string;
}

export interface FoundFiles {
  /** The file that tells of the studio, where there is one. */
  readonly studio: string | undefined;
  readonly records: readonly RecordFile[];
  /** Pictures in the folders of tiles. */
  readonly pictures: readonly OtherFile[];
  /** What lies in the firings' folder beside the records. */
  readonly logs: readonly OtherFile[];
  readonly problems: readonly Problem[];
}

/** Gathers what is found, in the order in which it is found. */
export class FileCollector {
  studio: string | undefined;
  readonly #records: RecordFile[] = [];
  readonly #pictures: OtherFile[] = [];
  readonly #logs: OtherFile[] = [];
  readonly #problems: Problem[] = [];

  add(...problems: readonly Problem[]): void {
    this.#problems.push(...problems);
  }

  addRecord(kind: KindOfRecord, folder: string, name: string): void {
    const id = name.slice(0, -".md".length).normalize("NFC");
    this.#records.push({ kind, id, file: `${folder}/${name}`, folder });
  }

  addSet(folder: string, name: string, id: string): void {
    const file = `${folder}/${name}`;
    this.#records.push({ kind: "set", id: id.normalize("NFC"), file, folder });
  }

  addPicture(folder: string, name: string): void {
    this.#pictures.push({ file: `${folder}/${name}`, folder, name });
  }

  addLog(folder: string, name: string): void {
    this.#logs.push({ file: `${folder}/${name}`, folder, name });
  }

  /** A file that is neither record nor photograph by its name, though it may have been meant as one. */
  addStray(archive: ArchiveFiles, stray: Stray, expected: string): void {
    this.add(
      strayRecord(archive, stray) ??
        strayWithoutEnding(stray) ??
        unexpectedFile(`${stray.folder}/${stray.name}`, expected),
    );
  }

  found(): FoundFiles {
    return {
      studio: this.studio,
      records: this.#records,
      pictures: this.#pictures,
      logs: this.#logs,
      problems: this.#problems,
    };
  }
}

/** A file that nobody will read: perhaps its name is a slip. */
export function unexpectedFile(file: string, expected: string): Problem {
  return problemOfFile(
    file,
    {
      code: "unexpected-file",
      message: `Tilebook does not know what to do with “${file}”`,
      hint: `${expected}. Rename it, or take it out of the archive.`,
    },
    [],
    "warning",
  );
}

/** A folder deeper than the archive goes. */
export function tooDeep(folder: string, hint: string): Problem {
  return problemOfFile(folder, {
    code: "folder-too-deep",
    message: `The folder ${folder}/ is too deep: what is in it was not read`,
    hint,
  });
}

/** Whether a file is Markdown, told by its name; `TB-014.md.md` has one ending too many. */
export function isMarkdown(name: string): boolean {
  return /\.md$/iu.test(name) && recordNameOf(name) === undefined;
}

/** Whether a file is a photograph, told by its name. */
export function isPicture(name: string): boolean {
  return /\.(jpe?g|png|webp|avif|tiff?|heic|heif)$/iu.test(name);
}

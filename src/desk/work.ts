/** What a page of the desk can do to the archive. Each writing is told in words, refused ones too. */
import { createHash } from "node:crypto";
import { type Changed, takeBack, typedText } from "../archive/take-back.ts";
import { type FieldChange, type RecordToWrite, writeFields } from "../archive/write-fields.ts";
import { type NewFile, writeNew } from "../archive/write-new.ts";
import type { TrialNeeds } from "../loads/try-load.ts";
import type { ArchiveNow } from "./archive-now.ts";
import type { Tray } from "./photographs/tray.ts";
import type { Written } from "./types.ts";
import { tellInTheWay, tellNewFiles, tellRefusal, tellTakenBack, tellWritten } from "./words.ts";

/** A record that is to be changed, as the page showed it. */
export interface SeenRecord {
  readonly file: string;
  readonly kind: RecordToWrite["kind"];
  /** `sumOf` its text when the page was made, which the page sends back. */
  readonly seen: string;
}

/** A picture without what it gives away, and the end of its file's name: `jpg`. */
export type TakeIn = (
  bytes: Uint8Array,
) => Promise<{ readonly bytes: Uint8Array; readonly ending: string } | { readonly why: string }>;

/** What can be done with a picture before it lies in the archive. Each says why it cannot, in whole sentences. */
export interface PictureCraft {
  /** Takes a picture in: nothing but the picture. */
  readonly takeIn: TakeIn;
  /** Looks at one that was taken in: its small picture, WebP, and what the QR codes in it say. */
  readonly contact: (
    bytes: Uint8Array,
  ) => Promise<
    { readonly small: Uint8Array; readonly codes: readonly string[] } | { readonly why: string }
  >;
  /** Turns one for good, by degrees to the right. */
  readonly turn: (bytes: Uint8Array, by: 90 | 180 | 270) => ReturnType<TakeIn>;
}

export interface DeskWork extends PictureCraft {
  /** With what a load is tried before it is written. */
  readonly trial: TrialNeeds;
  /** The archive as it is now. */
  readonly read: ArchiveNow["read"];
  /**
   * Writes fields into a record, or nothing where it was changed since it was shown.
   *
   * @throws MachineError where the disk or a permission fails
   */
  readonly writeFields: (record: SeenRecord, fields: readonly FieldChange[]) => Promise<Written>;
  /** Photographs that wait to be named. */
  readonly tray: Tray;
  /**
   * Takes back what was last written into a record here, where the file was not changed since.
   *
   * @throws MachineError where the disk or a permission fails
   */
  readonly takeBack: (file: string) => Promise<Written>;
  /**
   * Writes new files, all or none, and over none that is there.
   *
   * @throws MachineError where the disk or a permission fails
   */
  readonly writeNew: (files: readonly NewFile[]) => Promise<Written>;
}

/** By what a page says which state of a record it showed. */
export function sumOf(text: string): string {
  return createHash("sha256").update(text).digest("base64url").slice(0, 22);
}

/** @param dir the archive's folder */
export function deskWork(
  dir: string,
  now: ArchiveNow,
  needs: Pick<DeskWork, "trial" | "tray" | keyof PictureCraft>,
): DeskWork {
  const changes = new Map<string, Changed>();
  return {
    ...needs,
    read: now.read,
    async writeFields({ file, kind, seen }, fields) {
      const asRead = (await now.read()).texts.get(file);
      if (asRead === undefined || sumOf(asRead) !== seen)
        return refused(now, "changed", file, fields);
      const before = typedText(dir, file);
      const result = writeFields(dir, { file, kind, asRead }, fields);
      now.changed();
      if (!result.ok) return refused(now, result.because, file, fields);
      remember(changes, file, { before, after: typedText(dir, file) });
      const { lines } = result;
      return { written: true, words: tellWritten(file, lines), files: [{ file, lines }] };
    },
    async takeBack(file) {
      const change = changes.get(file);
      changes.delete(file);
      const isBack = change !== undefined && takeBack(dir, file, change);
      now.changed();
      return { written: isBack, words: tellTakenBack(isBack, file), files: [] };
    },
    async writeNew(files) {
      const inTheWay = writeNew(dir, files);
      now.changed();
      if (inTheWay) return { written: false, words: tellInTheWay(inTheWay), files: [] };
      return { written: true, words: tellNewFiles(files), files: files.map(asWritten) };
    },
  };
}

/** So many changes can be taken back, each once. */
const mostChanges = 100;

function remember(changes: Map<string, Changed>, file: string, change: Changed): void {
  changes.delete(file);
  changes.set(file, change);
  for (const [oldest] of changes) if (changes.size > mostChanges) changes.delete(oldest);
}

function refused(
  now: ArchiveNow,
  because: Parameters<typeof tellRefusal>[0],
  file: string,
  fields: readonly FieldChange[],
): Written {
  // What was read may be what is wrong: whoever asks again gets what is there.
  now.changed();
  return { written: false, words: tellRefusal(because, file, fields), files: [] };
}

/** A text with all its lines; of a picture only that it was written. */
function asWritten({ path, content }: NewFile) {
  const lines = typeof content === "string" ? content.trimEnd().split("\n") : [];
  return { file: path, lines: lines.map((text, i) => ({ line: i + 1, text })) };
}

/** Carries out what puts a problem right: see `Mend`. */
import { type NotRenamed, renameFiles } from "../disk/rename-file.ts";
import type { Mend, WriteMend } from "../records/mend.ts";
import { type FieldsWritten, writeFields } from "./write-fields.ts";

export type CarriedOut =
  | { readonly ok: true }
  /** Nothing was changed. */
  | { readonly ok: false; readonly inTheWay: NotRenamed | NotWritten };

interface NotWritten {
  readonly because: Extract<FieldsWritten, { ok: false }>["because"];
  readonly file: string;
}

/**
 * Carries a mend out, wholly or not at all. No file is overwritten, and of a record no letter is
 * changed but the field.
 *
 * @param dir the archive
 * @param texts what its records held when they were read, by file
 * @throws MachineError where the disk or a permission fails
 */
export function carryOutMend(
  dir: string,
  mend: Mend,
  texts: ReadonlyMap<string, string>,
): CarriedOut {
  const inTheWay =
    mend.does === "rename" ? renameFiles(dir, mend.renamings) : writeField(dir, mend, texts);
  return inTheWay ? { ok: false, inTheWay } : { ok: true };
}

function writeField(
  dir: string,
  { file, kind, path, value }: WriteMend,
  texts: ReadonlyMap<string, string>,
): NotWritten | undefined {
  if (typeof value !== "string") throw new Error("A random word is made before it is shown");
  const record = { file, kind, asRead: texts.get(file) ?? "" };
  const written = writeFields(dir, record, [{ path, value }]);
  return written.ok ? undefined : { because: written.because, file };
}

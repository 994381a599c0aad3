/** The record that an editor shows, and the place in its YAML that it asks about. */
import type { TextDocument } from "vscode-languageserver-textdocument";
import { type KnownNames, knownNames } from "../editing/names.ts";
import { type Shape, shapeOfRecord } from "../editing/shape.ts";
import type { ReadArchive } from "../reader/read-archive-files.ts";
import { yamlSpan } from "../reader/yaml-span.ts";
import type { RecordKind } from "../records/kinds.ts";
import type { FilePlace } from "./places.ts";

export interface RecordAt {
  readonly shape: Shape;
  readonly known: KnownNames;
  readonly yaml: string;
  /** The place that is asked about, as an offset into the YAML. */
  readonly offset: number;
  /** Where the YAML begins in the document. */
  readonly from: number;
}

/** Undefined where the place is in no YAML of a record: in the notes, or in another file. */
export function recordAt(
  document: TextDocument,
  position: { readonly line: number; readonly character: number },
  { file }: FilePlace,
  read: ReadArchive,
): RecordAt | undefined {
  const kind = kindOf(file, read);
  if (!kind || !read.archive) return undefined;
  const text = document.getText();
  const span = yamlSpan(text, kind === "studio" ? "yaml" : "markdown");
  const at = document.offsetAt(position);
  if (!span || at < span.from || at > span.to) return undefined;
  if (at === span.to && at < text.length) return undefined;
  return {
    shape: shapeOfRecord(kind),
    known: knownNames(read.archive, setOf(file, read)),
    yaml: text.slice(span.from, span.to),
    offset: at - span.from,
    from: span.from,
  };
}

/** Whether a file was there when the archive was read. */
export function knows(read: ReadArchive, file: string): boolean {
  return kindOf(file, read) !== undefined;
}

function kindOf(file: string, read: ReadArchive): RecordKind["name"] | undefined {
  if (file === read.studioFile) return "studio";
  return read.recordFiles.find((record) => record.file === file)?.kind;
}

/** The set whose folder the file lies in, its own record too. */
function setOf(file: string, { archive }: ReadArchive): string | null {
  const folder = file.slice(0, file.lastIndexOf("/") + 1);
  const sets = [...(archive?.sets.values() ?? [])];
  return sets.find((set) => set.file.startsWith(folder) && folder !== "tiles/")?.id ?? null;
}

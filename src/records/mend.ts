/**
 * What can put a problem right without a guess. Whoever finds the problem says so; `check --fix`
 * shows the mend, asks, and carries it out.
 */
import type { RecordKind } from "./kinds.ts";

/** A file that gets another name. */
export interface Renaming {
  /** Relative to the archive, with `/`. */
  readonly from: string;
  readonly to: string;
}

/** Files are renamed: all of them, or none. */
export interface RenameMend {
  readonly does: "rename";
  readonly renamings: readonly Renaming[];
}

/** A field is written into a record, and no other letter of it changes. */
export interface WriteMend {
  readonly does: "write";
  /** The record's file, relative to the archive. */
  readonly file: string;
  readonly kind: RecordKind["name"];
  /** The names that lead to the field. */
  readonly path: readonly string[];
  /** The value as it is written, or a word that nobody can guess, made when it is asked for. */
  readonly value: string | { readonly random: "link" };
}

export type Mend = RenameMend | WriteMend;

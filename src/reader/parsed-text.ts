/** What a record's file holds once its text is taken apart. */
import type { SourceMap } from "../records/read.ts";
import type { Position } from "./line-index.ts";
import type { TextFault } from "./problem-of-file.ts";

/** How a file is written: Markdown with front matter, or nothing but YAML. */
export type Form = "markdown" | "yaml";

/** A field that was left empty, and where its name stands. */
export interface BlankField extends Position {
  /** The names that lead to it, its own the last; entries of lists have none. */
  readonly path: readonly string[];
}

/** What a file holds, whatever the file is called: a function of its bytes alone. */
export interface ParsedText {
  /** Null where nothing can be read. */
  readonly source: SourceMap | null;
  /** What was written below the front matter. */
  readonly notes: string;
  /** Fields that were left empty, which are no part of the source. */
  readonly blanks: readonly BlankField[];
  readonly faults: readonly TextFault[];
}

/** Takes the text of a file apart: see `splitRecord` and `parseText` of the archive's room. */
export interface TextParser {
  parse(text: string, form: Form): ParsedText;
  /** The YAML of a text, its lines numbered as in the file; undefined where none can be found. */
  yamlOf(text: string, form: Form): string | undefined;
}

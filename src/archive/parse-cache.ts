/** What is remembered of files that were read before. */
import type { SourceMap } from "../records/read.ts";
import type { TextFault } from "./problem-of-file.ts";

/** What a file holds, whatever the file is called: a function of its bytes alone. */
export interface ParsedText {
  /** Null where nothing can be read. */
  readonly source: SourceMap | null;
  /** What stands below the front matter. */
  readonly notes: string;
  readonly faults: readonly TextFault[];
}

/** Remembers parsed files by the hash of their text. */
export interface ParseCache {
  get(hash: string): ParsedText | undefined;
  put(hash: string, parsed: ParsedText): void;
  /** Keeps what was asked for and put since the cache was opened, and forgets the rest. */
  save(): void;
}

/** A cache that remembers nothing. */
export const noCache: ParseCache = {
  get: () => undefined,
  put: () => {},
  save: () => {},
};

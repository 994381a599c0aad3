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

/** Remembers parsed files by the hash of their bytes. */
export interface ParseCache {
  get(hash: string): ParsedText | undefined;
  put(hash: string, parsed: ParsedText): void;
}

/** A cache that lasts as long as the program runs. */
export function memoryCache(): ParseCache {
  const remembered = new Map<string, ParsedText>();
  return {
    get: (hash) => remembered.get(hash),
    put: (hash, parsed) => void remembered.set(hash, parsed),
  };
}

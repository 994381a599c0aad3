/** What is remembered of files that were read before. */
import type { ParsedText } from "../reader/parsed-text.ts";

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

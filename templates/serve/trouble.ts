/** What `serve` has to tell whoever looks at the site while it is worked on. */

/** A fault of a record, with the place where it stands. */
export interface ToldFault {
  /** Relative to the archive. */
  readonly file: string;
  readonly line: number;
  readonly message: string;
  readonly hint: string;
  /** The line as it is written; empty where there is none to show. */
  readonly lineText: string;
}

/** Why the site could not be built, or could be built and not be written: the records, or the machine. */
export type Trouble =
  | { readonly kind: "faults"; readonly faults: readonly ToldFault[] }
  | { readonly kind: "failed" | "unwritten"; readonly words: string };

/**
 * A picture file with nothing in it but what its decoder needs. Of a file that gives nothing away
 * `bytes` are those of the file itself: that is how one is told from the other.
 */
export interface Scrubbed {
  /** Undefined where the file is built so that nothing can be taken out without risk. */
  readonly bytes: Buffer | undefined;
  /** What was taken out, or would have to be: each stretch whole and unpacked, fit for reading. */
  readonly notes: readonly Uint8Array[];
  /** A file that is itself built like EXIF: what its directories lead to is read as well. */
  readonly block?: Uint8Array;
}

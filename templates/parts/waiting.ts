/** Records that a site was published without, until they are mended. */

export type KindOfWaiting = "set" | "tile" | "firing" | "glaze" | "clay" | "material" | "file";

export interface WaitingRecord {
  readonly kind: KindOfWaiting;
  readonly id: string;
  /** Relative to the archive. */
  readonly file: string;
  /** Its own faults; a message is null where it may not be shown here. */
  readonly faults: readonly { readonly line: number; readonly message: string | null }[];
  /** What it rests on that waits too; without an id where that may not be shown here. */
  readonly because: { readonly kind: KindOfWaiting; readonly id: string | null } | null;
  /** Addresses of the pages that it belongs on. */
  readonly pages: readonly string[];
}

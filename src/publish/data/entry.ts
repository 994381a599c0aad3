/** Files of a site that programs read, made or still to be made. */

/** A file of the site: its path from the root, and what it holds. */
export interface DataFile {
  readonly path: string;
  readonly content: string;
}

export type Content = string | Uint8Array;

/** A data file that is made when it is asked for. */
export interface DataEntry {
  readonly path: string;
  readonly mediaType: string;
  /** How many rows it has; null where it has none, as a schema, or those of several tables. */
  readonly rows: number | null;
  /** The table that it holds; null where it is of JSON, or holds all. */
  readonly table: string | null;
  /** The path of the JSON Schema that it is held to, or of what tells of its table; null where it has none. */
  readonly schema: string | null;
  readonly make: () => Content | Promise<Content>;
}

/** What there is to know of a file that was made. */
export interface FileSum {
  readonly bytes: number;
  /** In hexadecimal digits, as programs that check files print it. */
  readonly sha256: string;
}

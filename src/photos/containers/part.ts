/** One piece of a picture file: a JPEG segment, a PNG or WebP chunk. Offsets are of the file. */
export interface Part {
  /** The marker as two hex digits (JPEG) or the chunk's four letters. */
  readonly name: string;
  /** The whole piece, header and check sum included. */
  readonly start: number;
  readonly end: number;
  /** What it holds. */
  readonly bodyStart: number;
  readonly bodyEnd: number;
}

export interface Parts {
  readonly parts: readonly Part[];
  /** Whether the file goes on to the end that its format sets. */
  readonly complete: boolean;
}

export function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}

export function latin1(bytes: Uint8Array, from: number, to: number): string {
  return bufferOf(bytes).toString("latin1", from, to);
}

/** The same bytes with a buffer's searching and reading, not copied. */
export function bufferOf(bytes: Uint8Array): Buffer {
  return Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}

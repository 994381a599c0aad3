/** One piece of a picture file: a JPEG segment, a PNG or WebP chunk. Offsets are of the file. */
export interface Part {
  /** The marker as two hex digits (JPEG) or the chunk's four letters. */
  name: string;
  /** The whole piece, header and check sum included. */
  start: number;
  end: number;
  /** What it holds. */
  bodyStart: number;
  bodyEnd: number;
}

export interface Parts {
  parts: Part[];
  /** Whether the file goes on to the end that its format sets. */
  complete: boolean;
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

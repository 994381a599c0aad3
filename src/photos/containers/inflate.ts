import { type Inflate, inflateSync } from "node:zlib";

export interface Inflated {
  readonly unpacked: Buffer;
  /** Whether the packed bytes are all that there is. */
  readonly isAll: boolean;
}

/** Unpacks (RFC 1950). Undefined where the bytes are not packed, or damaged. */
export function inflate(packed: Uint8Array, limit: number): Inflated | "too large" | undefined {
  try {
    const options = { maxOutputLength: Math.max(1, limit), info: true };
    // With `info` it gives back more than its types tell.
    const { buffer, engine } = inflateSync(packed, options) as unknown as {
      buffer: Buffer;
      engine: Inflate;
    };
    return { unpacked: buffer, isAll: engine.bytesWritten === packed.length };
  } catch (error) {
    return error instanceof RangeError ? "too large" : undefined;
  }
}

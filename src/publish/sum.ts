/** Sums of what files are made of and hold. */
import { hash } from "node:crypto";

/** 132 bits of the SHA-256: short to store, and nobody finds two things with the same. */
const digits = 22;

/** The sum of a content, as letters, digits, `-` and `_`. */
export function sumOf(content: string | Uint8Array): string {
  return hash("sha256", content, "base64url").slice(0, digits);
}

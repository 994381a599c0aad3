import { createHash } from "node:crypto";

/** SHA-256 in hexadecimal digits. */
export function hashOf(content: Uint8Array | string): string {
  return createHash("sha256").update(content).digest("hex");
}

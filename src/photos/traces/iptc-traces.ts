import { bufferOf } from "../containers/part.ts";
import type { Trace } from "./trace.ts";

/**
 * Datasets of the application record (IPTC Information Interchange Model 4.2, chapter 6): content
 * location, city, sub-location, province, country; by-line, credit, copyright, contact.
 */
const datasets: ReadonlyMap<number, Trace> = new Map([
  ...[26, 27, 90, 92, 95, 100, 101].map((number) => [number, "place"] as const),
  ...[80, 110, 116, 118, 122].map((number) => [number, "owner"] as const),
]);

const applicationRecord = Buffer.from([0x1c, 2]);
const headerLength = 5;

/** Finds traces in the datasets that photo agencies' programs write, wherever they stand. */
export function findIptcTraces(bytes: Uint8Array): Trace[] {
  const buffer = bufferOf(bytes);
  const found = new Set<Trace>();
  let at = buffer.indexOf(applicationRecord);
  while (at >= 0 && at + headerLength < buffer.length) {
    const trace = datasets.get(buffer[at + 2] ?? 0);
    if (trace && holdsWords(buffer, at)) found.add(trace);
    at = buffer.indexOf(applicationRecord, at + 2);
  }
  return [...found];
}

const lookedAt = 32;

/** Text as long as it says, and then another dataset, padding or the end: no chance bytes. */
function holdsWords(buffer: Buffer, at: number): boolean {
  const length = buffer.readUInt16BE(at + 3);
  const start = at + headerLength;
  if (length === 0 || start + length > buffer.length) return false;
  const after = buffer[start + length] ?? 0;
  const words = buffer.subarray(start, start + Math.min(length, lookedAt));
  return words.every((byte) => byte >= 0x20) && [0, 0x1c, 0x38].includes(after);
}

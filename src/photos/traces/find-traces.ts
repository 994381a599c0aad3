import type { Scrubbed } from "../scrub/scrubbed.ts";
import { findBlockTraces, findExifTraces } from "./exif-traces.ts";
import { findIptcTraces } from "./iptc-traces.ts";
import { findTextTraces } from "./text-traces.ts";
import type { Trace } from "./trace.ts";

/**
 * Tells what can be read in what stands beside a picture, in alphabetical order. Nothing rests on
 * its finding everything: whatever a picture does not need is "notes" at least.
 */
export function findTraces({ notes, block }: Pick<Scrubbed, "block" | "notes">): Trace[] {
  const found = new Set<Trace>(notes.length > 0 ? ["notes"] : []);
  for (const stretch of notes) {
    const readers = [findExifTraces, findIptcTraces, findTextTraces];
    for (const trace of readers.flatMap((read) => read(stretch))) found.add(trace);
  }
  if (block) for (const trace of findBlockTraces(block)) found.add(trace);
  return [...found].sort();
}

/** What records held in older versions: remembered by git's ids, in memory alone, since it is words. */
import { textParser } from "../../archive/parse-text.ts";
import { readBlobs } from "../../git/read-blobs.ts";
import { decodeText } from "../../reader/decode-text.ts";
import type { Read, SourceMap } from "../../records/read.ts";
import { largestRecord } from "../../terms/limits.ts";

/** A version of a record as it is read today; null where it cannot be. */
export type Written<T> = { readonly record: T; readonly notes: string } | null;

/** Reads a source as one kind of record. */
type ReadAs<T> = (source: SourceMap) => Read<T>;

/** So many versions of one kind are remembered: four of each of 10,000 tiles. */
const mostRemembered = 40_000;

/**
 * Makes what reads versions of one kind of record, and remembers them while the program runs.
 *
 * @returns told the archive's folder and git's ids of what they held; gives each by its id
 */
export function versionReader<T>(readAs: ReadAs<T>) {
  const known = new Map<string, Written<T>>();
  return async (
    dir: string,
    blobs: ReadonlySet<string>,
  ): Promise<ReadonlyMap<string, Written<T>>> => {
    const left = [...blobs].filter((id) => !known.has(id));
    const texts = await readBlobs(dir, left, largestRecord).catch(() => new Map<string, never>());
    const found = [...blobs].map((id): readonly [string, Written<T>] => {
      const before = known.get(id);
      return [id, before === undefined ? readVersion(texts.get(id), readAs) : before];
    });
    if (known.size + texts.size > mostRemembered) known.clear();
    for (const [id, version] of found) known.set(id, version);
    return new Map(found);
  };
}

function readVersion<T>(bytes: Uint8Array | undefined, readAs: ReadAs<T>): Written<T> {
  const reading = bytes && decodeText(bytes);
  if (!reading?.ok) return null;
  const { source, notes, faults } = textParser.parse(reading.text, "markdown");
  if (source === null || faults.length > 0) return null;
  const read = readAs(source);
  return read.ok ? { record: read.record, notes } : null;
}

/** Spreads what is asked for one at a time over a number of files, so that none is large and none is searched. */
import { idKey } from "./ids.ts";

/** In which of so many files something is, by its id: the same for every spelling of it. */
export function bucketOf(id: string, buckets: number): number {
  let sum = 0;
  for (const letter of idKey(id)) sum = (sum * 31 + (letter.codePointAt(0) ?? 0)) % 1_000_003;
  return sum % Math.max(1, buckets);
}

/**
 * How many files there are for so many things, a power of two, so that few more of them change no file
 * but their own.
 *
 * @param each about how many of them are in one file
 */
export function countBuckets(things: number, each: number): number {
  let buckets = 1;
  while (buckets * each < things) buckets *= 2;
  return buckets;
}

/** How the words of a large site are shared out among several indexes. */
import type { FiledPage } from "./filed-page.ts";
import { sumOf } from "./sum.ts";

/** Where a browser finds the index; that of a small site is all there. */
const searchFolder = "pagefind";

/** Up to so many records one index is simplest and ranks best. */
const mostInOne = 2000;

/** Fewer records in each would make more requests of every search than are worth it. */
const usualInShard = 1500;

/**
 * The shards of a site with their pages. A page stays in its shard whatever becomes of others, as long
 * as the archive neither doubles nor halves.
 */
export function shardsOf(
  pages: readonly FiledPage[],
): readonly { readonly folder: string; readonly pages: readonly FiledPage[] }[] {
  const shards = Array.from({ length: countShards(pages.length) }, (): FiledPage[] => []);
  for (const filed of pages) shards[placeOf(filed.page.path, shards.length)]?.push(filed);
  return shards.map((own, i) => ({ folder: shardFolder(i), pages: own }));
}

/** The folders of all shards but the first, for so many records. */
export function furtherShards(records: number): readonly string[] {
  return Array.from({ length: countShards(records) }, (_, i) => shardFolder(i)).slice(1);
}

function shardFolder(place: number): string {
  return place === 0 ? searchFolder : `${searchFolder}/shard-${place}`;
}

/** A power of two, so that it seldom changes. */
function countShards(records: number): number {
  if (records <= mostInOne) return 1;
  return 2 ** Math.ceil(Math.log2(records / usualInShard));
}

function placeOf(path: string, shards: number): number {
  return Buffer.from(sumOf(path), "base64url").readUInt32BE() % shards;
}

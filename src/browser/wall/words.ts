/**
 * Finds words: a code or a name in the facets file at once, everything else by Pagefind, whose
 * bundle is loaded when somebody types. Opened from a folder Pagefind cannot run, and elsewhere it
 * may fail: the finder says which, and that only codes and names were searched.
 */
import type { Facets } from "../../publish/facets-file.ts";
import type { Hit, search } from "../pagefind/pagefind.js";

export interface WordsFound {
  /** For each tile 1 where the words were found. */
  readonly tiles: Uint8Array;
  /** Why notes and recipes were not searched: the page lies in a folder, or something failed. */
  readonly missed: "folder" | "failed" | null;
  /** Pages of other kinds that hold the words, the best first. */
  readonly others: readonly OtherPage[];
}

/** A glaze, a pair, a firing, a material, … */
export interface OtherPage {
  readonly url: string;
  readonly title: string;
  readonly kind: string;
}

/** How many pages of other kinds are told, the best first: each is a small file of its own. */
const mostOthers = 8;

/** The tile that a code names, however it is written: `ev 103`, `EV-103`. */
export function findCode(facets: Facets, words: string): string | undefined {
  const typed = bare(words);
  if (typed === "") return undefined;
  const place = facets.codes.findIndex((code) => bare(code) === typed);
  return place < 0 ? undefined : facets.urls[place];
}

function bare(code: string): string {
  return code
    .normalize("NFC")
    .toLowerCase()
    .replace(/[\s._-]+/gu, "");
}

/** Tiles whose code or glazes hold every word. */
export function findNames({ codes, titles, names }: Facets, words: string): Uint8Array {
  const wanted = words.toLowerCase().split(/\s+/u).filter(Boolean);
  return Uint8Array.from(codes, (code, i) => {
    const text = `${code} ${names[titles[i] ?? 0] ?? ""}`.toLowerCase();
    return wanted.every((word) => text.includes(word)) ? 1 : 0;
  });
}

/**
 * @param root the way from this page to the root of the site
 */
export async function findWords(facets: Facets, words: string, root: string): Promise<WordsFound> {
  const code = findCode(facets, words);
  if (code !== undefined) return onlyTile(facets, code);
  const tiles = findNames(facets, words);
  if (location.protocol === "file:") return { tiles, missed: "folder", others: [] };
  try {
    const { search, addresses } = await loadIndex(facets, root);
    const { results } = await search(words);
    const places = new Map(facets.urls.map((url, i) => [url, i]));
    const placeOf = ({ id }: { readonly id: string }) => places.get(addresses.get(id) ?? "");
    for (const result of results) {
      const place = placeOf(result);
      if (place !== undefined) tiles[place] = 1;
    }
    const rest = results.filter((result) => placeOf(result) === undefined).slice(0, mostOthers);
    const others = await Promise.all(rest.map((result) => result.data()));
    return { tiles, missed: null, others: others.map(toOtherPage) };
  } catch (error) {
    console.error(error);
    return { tiles: findNames(facets, words), missed: "failed", others: [] };
  }
}

function toOtherPage({ url, meta }: Hit): OtherPage {
  return { url, title: meta.title, kind: meta.kind };
}

interface WordIndex {
  readonly search: typeof search;
  /** The page of each record, relative to the root. */
  readonly addresses: ReadonlyMap<string, string>;
}

let loading: Promise<WordIndex> | undefined;

/** Once for all searches; where it fails, once more for the next. */
function loadIndex({ shards }: Facets, root: string): Promise<WordIndex> {
  const folderOf = (shard: string) => pathOf(`${root}${shard}/`);
  loading ??= joinShards(folderOf("pagefind"), shards.map(folderOf)).catch((error) => {
    loading = undefined;
    throw error;
  });
  return loading;
}

async function joinShards(first: string, others: readonly string[]): Promise<WordIndex> {
  const listing = Promise.all([first, ...others].map(loadAddresses));
  const pagefind = await import("../pagefind/pagefind.js");
  await Promise.all(others.map((folder) => pagefind.mergeIndex(folder)));
  return { search: pagefind.search, addresses: new Map((await listing).flat()) };
}

async function loadAddresses(folder: string): Promise<readonly (readonly [string, string])[]> {
  const response = await fetch(`${folder}addresses.json`);
  if (!response.ok) throw new Error(`${response.url}: ${response.status}`);
  return Object.entries((await response.json()) as Record<string, string>);
}

/** A whole code means its tile and no other. */
function onlyTile({ urls }: Facets, only: string): WordsFound {
  const tiles = Uint8Array.from(urls, (url) => (url === only ? 1 : 0));
  return { tiles, missed: null, others: [] };
}

/** Pagefind gives addresses from the host's root, wherever beneath it the site stands. */
function pathOf(url: string): string {
  return new URL(url, location.href).pathname;
}

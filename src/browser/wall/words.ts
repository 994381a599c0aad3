/**
 * Finds words: a code or a name in the facets file at once, everything else by Pagefind, whose
 * bundle is loaded when somebody types. Opened from a folder Pagefind cannot run, and the finder
 * says that only codes and names were searched.
 */
import type { Facets } from "../../publish/facets-file.ts";

export interface WordsFound {
  /** For each tile 1 where the words were found. */
  readonly tiles: Uint8Array;
  /** True where notes and recipes were searched too. */
  readonly whole: boolean;
}

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
  const tiles = findNames(facets, words);
  if (location.protocol === "file:") return { tiles, whole: false };
  try {
    const { search } = await import("../pagefind/pagefind.js");
    const { results } = await search(words);
    const places = new Map(facets.urls.map((url, i) => [pathOf(root + url), i]));
    for (const { url } of await Promise.all(results.map((result) => result.data()))) {
      const place = places.get(pathOf(url));
      if (place !== undefined) tiles[place] = 1;
    }
    return { tiles, whole: true };
  } catch {
    return { tiles, whole: false };
  }
}

/** Pagefind gives addresses from the host's root, wherever beneath it the site stands. */
function pathOf(url: string): string {
  return new URL(url, location.href).pathname;
}

/** Pages with their places among the files of all sites, and the sums that tell whether they changed. */
import type { Ledger } from "./ledger.ts";
import { type Page, type SearchEntry, searchEntryOf, withProps } from "./page.ts";
import { keyOfPage } from "./page-key.ts";
import { renderingCode } from "./rendering-code.ts";
import { sumOf } from "./sum.ts";
import { inTurns } from "./turns.ts";

export interface FiledPage {
  readonly page: Page;
  /** Relative to the root of the whole, in which the sites of unlisted sets have folders of their own. */
  readonly file: string;
  /** The sum of all that the page is made of. */
  readonly key: string;
  /** The sum of what a search is to find on it; empty where that is nothing. */
  readonly words: string;
  /** What a search is to find on it; null where that is nothing. */
  readonly entry: () => SearchEntry | null;
}

/** So many changed pages keep their props until they are written; those of more are made twice. */
const mostHeld = 2000;

/**
 * @param under the folder of the site beneath the root; empty for the root itself
 * @throws where two pages have one address
 */
export async function filePages(
  pages: readonly Page[],
  under: string,
  ledger: Ledger,
): Promise<readonly FiledPage[]> {
  refuseSameAddress(pages);
  const code = renderingCode();
  const filed: FiledPage[] = [];
  let held = 0;
  await inTurns(pages, (page) => {
    const file = fileUnder(under, page.path);
    const made = withProps(page);
    const key = keyOfPage(made, code);
    const known = ledger.find(file);
    if (known?.key === key) {
      const entry = () => searchEntryOf(page);
      filed.push({ page, file, key, words: known.words, entry });
      return;
    }
    held += 1;
    // The words of all changed pages take little room, and are wanted at once.
    const found = searchEntryOf(made);
    filed.push({
      page: held > mostHeld ? page : made,
      file,
      key,
      words: sumOfWords(found),
      entry: () => found,
    });
  });
  return filed;
}

/** A path of a site as one of the whole. */
export function fileUnder(under: string, path: string): string {
  return under === "" ? path : `${under}/${path}`;
}

function sumOfWords(entry: SearchEntry | null): string {
  return entry ? sumOf(JSON.stringify(entry)) : "";
}

function refuseSameAddress(pages: readonly Page[]): void {
  const seen = new Set<string>();
  for (const { path } of pages) {
    if (seen.has(path)) throw new Error(`Two pages have the address ${path}`);
    seen.add(path);
  }
}

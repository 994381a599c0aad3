/** Sites made one after another in folders of a test, with what is remembered between them. */
import { join } from "node:path";
import { h } from "preact";
import type { Place } from "../../src/publish/carry.ts";
import { type FiledPage, filePages } from "../../src/publish/filed-page.ts";
import { openLedger } from "../../src/publish/ledger.ts";
import { definePage, type Page } from "../../src/publish/page.ts";

/**
 * Makes something of a site in a folder, as a build does that comes after another.
 *
 * @param base the test's own folder
 */
export async function makeIn<T>(
  base: string,
  { folder, last }: Pick<Place, "folder" | "last">,
  work: (place: Place) => Promise<T> | T,
): Promise<T> {
  const ledger = await openLedger(join(base, "cache"), join(base, "site"));
  const done = await work({ folder, last, ledger });
  await ledger.store(folder);
  return done;
}

/** Pages of the site for everyone, as a build files them before it writes any. */
export function filed(pages: readonly Page[], { ledger }: Place): Promise<readonly FiledPage[]> {
  return filePages(pages, "", ledger);
}

function Words({ words }: { words: string }) {
  return h("p", null, words);
}

/** A page that holds some words, and is found by them if it has a title. */
export function pageOf(path: string, words: string, title: string | null = null): Page {
  const search =
    title === null
      ? null
      : (props: { words: string }) => ({ title, kind: "Tile", words: props.words, picture: null });
  return definePage({ path, component: Words, props: () => ({ words }), search });
}

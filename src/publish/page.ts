/** A page of the site, before it is rendered. */
import type { VNode } from "preact";

/** What a search for words should find on a page, and how it is told in the list of hits. */
export interface SearchEntry {
  readonly title: string;
  /** `Tile`, `Glaze`, `Firing`: what kind of entry it is. */
  readonly kind: string;
  /** Codes, names, oxides with and without subscripts, notes: the words to be found. */
  readonly words: string;
  /** Address of a small picture, relative to the root. */
  readonly picture: string | null;
}

export interface Page {
  /** The file, relative to the root of the site: `tiles/tb-014.html`. */
  readonly path: string;
  /** Makes the markup from the props and from nothing else, so that equal props give equal bytes. */
  readonly component: (props: never) => VNode;
  /**
   * Makes the props, each time it is asked, so that not those of all pages are held at once. Plain
   * values: texts, numbers, true and false, null, and lists and objects of them.
   */
  readonly props: () => object;
  /** What is to be found on it, from the props alone; left out of search, feed and sitemap where null. */
  readonly search: ((props: never) => SearchEntry) | null;
}

/** A page whose props are those that its component asks for. */
interface PageOf<Props extends object> extends Page {
  readonly component: (props: Props) => VNode;
  readonly props: () => NoInfer<Props>;
  readonly search: ((props: NoInfer<Props>) => SearchEntry) | null;
}

/** Puts a page together; the type check sees to it that component and props fit. */
export function definePage<Props extends object>(page: PageOf<Props>): Page {
  return page;
}

/** What a search should find on a page; null where it is to find nothing there. */
export function searchEntryOf({ props, search }: Page): SearchEntry | null {
  return search?.(props() as never) ?? null;
}

/** The same page with its props made: for whoever needs them more than once. */
export function withProps(page: Page): Page {
  const props = page.props();
  return { ...page, props: () => props };
}

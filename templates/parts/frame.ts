/** What every page is given of the site that it stands in. */

import type { StudioMark } from "../../src/catalogue/own.ts";
import type { Licence } from "../../src/terms/licences.ts";

/** A page in the studio's own words, to lead to. */
export interface OwnLink {
  readonly title: string;
  readonly url: string;
}

export interface Frame {
  /** The way back to the root: empty, `../`, or its whole path on a page that is shown at any depth. */
  readonly root: string;
  /** The page's own place, relative to the root. */
  readonly path: string;
  /** The whole address of the root, with a slash behind it; null where the studio gives none. */
  readonly site: string | null;
  readonly studio: string;
  /** Shown before its name; null where it has none. */
  readonly mark: StudioMark | null;
  /** The studio's own website. */
  readonly website: string | null;
  /** The studio's own pages. */
  readonly pages: readonly OwnLink[];
  /** What others may do with records and photographs; null where the studio says nothing of it. */
  readonly licence: {
    readonly words: string;
    /** Null where they name no licence that is known. */
    readonly known: Licence | null;
  } | null;
  /** The page's whole address for search engines; null where the studio gives no address. */
  readonly canonical: string | null;
  /** True for a site that is reached only by its link. */
  readonly unlisted: boolean;
  /** What a site of one set alone says of that; null on a site that shows more. */
  readonly alone: string | null;
  /** The form on which tiles are added; null on a site that families are given. */
  readonly form: string | null;
  /** Null where the site has no feed of its newest results. */
  readonly feed: string | null;
  /** Records that were left out until they are mended; null where there are none. */
  readonly waiting: {
    /** Of the whole site. */
    readonly records: number;
    /** Those that belong on this page. */
    readonly here: number;
  } | null;
}

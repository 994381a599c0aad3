/** A site that is to be published: its catalogue, where it lies, and what goes into it. */
import type { Catalogue } from "../catalogue/types.ts";
import { rememberFor } from "../terms/remember.ts";
import { openPages } from "./pages/all.ts";
import type { SitePlace } from "./pages/site.ts";

export interface SiteRequest extends SitePlace {
  readonly catalogue: Catalogue;
  /** The bytes of the studio's mark; left out where it has none. */
  readonly mark?: Uint8Array | undefined;
}

/** The pages of a site, listed once whoever asks. */
export const pagesOf = rememberFor((site: SiteRequest) => openPages(site.catalogue, site));

/** The addresses of all pictures that a site shows. */
export const pictureUrls = rememberFor(
  ({ catalogue }: SiteRequest): ReadonlySet<string> =>
    new Set(
      catalogue.tiles.flatMap((tile) =>
        tile.pictures.flatMap((picture) => picture.files.map((file) => file.url)),
      ),
    ),
);

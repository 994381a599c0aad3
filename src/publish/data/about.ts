/** What the data of a site says of itself, in every file that has room for it. */

import { withSlash } from "../../catalogue/addresses.ts";
import type { CatalogueStudio } from "../../catalogue/studio.ts";
import { readLicence } from "../../terms/licences.ts";

/** Null where the studio does not say. */
export interface About {
  readonly studio: string;
  /** Where the site is published, with a slash at its end. */
  readonly address: string | null;
  readonly repository: string | null;
  readonly licence: {
    /** As the studio wrote it. */
    readonly words: string;
    /** Its id in the SPDX licence list; null where the words leave it open. */
    readonly spdx: string | null;
    readonly address: string | null;
  } | null;
}

export function aboutOf({ name, address, repository, licence }: CatalogueStudio): About {
  const known = licence === null ? undefined : readLicence(licence);
  return {
    studio: name,
    address: address === null ? null : withSlash(address),
    repository,
    licence:
      licence === null
        ? null
        : { words: licence, spdx: known?.id ?? null, address: known?.address ?? null },
  };
}

/** The same as a list of names and values. */
export function aboutEntries({ studio, address, repository, licence }: About) {
  return [
    ["studio", studio],
    ["address", address],
    ["repository", repository],
    ["licence", licence?.words ?? null],
    ["licence_spdx", licence?.spdx ?? null],
    ["licence_address", licence?.address ?? null],
  ] as const;
}

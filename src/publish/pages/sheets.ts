/** Sheets to print for a set's codes, before there are tiles. */
import { SheetsPage } from "../../../templates/pages/sheets-page.tsx";
import { type SheetKind, sheetKinds } from "../../../templates/words/site/sheets.ts";
import { sheetsUrl, tileUrl, turnedUrl } from "../../catalogue/addresses.ts";
import type { CatalogueSet } from "../../catalogue/sets.ts";
import { definePage, type Page } from "../page.ts";
import type { Site } from "./site.ts";
import { cutGroups } from "./turning.ts";

/** As many labels as stand on a sheet of A4, and six sheets of notes. */
const codesOnAPage = 24;

export function sheetPages(site: Site): readonly Page[] {
  return site.catalogue.sets
    .filter((set) => hasSheets(site, set))
    .flatMap((set) => sheetKinds.flatMap((what) => sheetsOfSet(site, set, what)));
}

/** Whether a set has codes to print sheets for; what families are given needs none. */
export function hasSheets({ catalogue: { studio } }: Site, { codes }: CatalogueSet): boolean {
  return codes.length > 0 && studio.alone?.forFamilies !== true;
}

function sheetsOfSet(site: Site, set: CatalogueSet, what: SheetKind): readonly Page[] {
  const url = sheetsUrl(what, set.id);
  return cutGroups(url, [{ title: "", items: set.codes }], codesOnAPage).map(({ groups, turn }) => {
    const path = turnedUrl(url, turn.here);
    return definePage({
      path,
      component: SheetsPage,
      props: () => ({
        frame: site.frame(path, url),
        what,
        set: { name: set.name, url: set.url },
        jars: what === "notes" ? set.jars.slice(0, mostJars) : [],
        codes: groups.flatMap(({ items }) =>
          items.map((code) => ({ code, address: site.frame(tileUrl(code)).canonical })),
        ),
        turn,
      }),
      search: null,
    });
  });
}

/** More jars than a quarter of a sheet can name. */
const mostJars = 40;

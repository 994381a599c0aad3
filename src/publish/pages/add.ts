/** The page of the tile form. */
import { AddPage } from "../../../templates/pages/add-page.tsx";
import { sheetsUrl } from "../../catalogue/addresses.ts";
import { definePage, type Page } from "../page.ts";
import { formPath, type Site } from "./site.ts";

/** Sheets of older sets are on the sets' own pages. */
const mostSheets = 8;

/** No page on a site that families are given: they add no tiles. */
export function addPages(site: Site): readonly Page[] {
  if (site.catalogue.studio.alone?.forFamilies) return [];
  return [
    definePage({
      path: formPath,
      component: AddPage,
      props: () => ({
        frame: site.frame(formPath),
        sheets: site.catalogue.sets
          .filter(({ codes }) => codes.length > 0)
          .slice(0, mostSheets)
          .map(({ id, name }) => ({ name, url: sheetsUrl("notes", id) })),
      }),
      search: null,
    }),
  ];
}

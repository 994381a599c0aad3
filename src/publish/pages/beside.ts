/** The page of what is set side by side. */
import { BesidePage } from "../../../templates/pages/beside-page.tsx";
import { besideIndex } from "../beside.ts";
import { definePage, type Page } from "../page.ts";
import type { Site } from "./site.ts";

export function besidePages(site: Site): readonly Page[] {
  const path = "beside.html";
  return [
    definePage({
      path,
      component: BesidePage,
      props: () => ({ frame: site.frame(path), index: besideIndex(site.catalogue) }),
      search: null,
    }),
  ];
}

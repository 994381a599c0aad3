/** Lists of records, a line each, that go on over several pages. */
import {
  type ListLine,
  ListPage,
  type ListPageProps,
} from "../../../templates/pages/list-page.tsx";
import { turnedUrl } from "../../catalogue/addresses.ts";
import { definePage, type Page } from "../page.ts";
import type { Site } from "./site.ts";
import { cutGroups, type Group, linesOnAPage } from "./turning.ts";

export interface LineList extends Omit<ListPageProps, "frame" | "groups" | "turn"> {
  readonly url: string;
  readonly groups: readonly Group<ListLine>[];
}

/** All pages of a list. */
export function pagesOfLines(site: Site, { url, groups, ...list }: LineList): readonly Page[] {
  return cutGroups(url, groups, linesOnAPage).map((cut) => {
    const path = turnedUrl(url, cut.turn.here);
    return definePage({
      path,
      component: ListPage,
      props: () => ({ frame: site.frame(path, url), ...list, ...cut }),
      search: null,
    });
  });
}

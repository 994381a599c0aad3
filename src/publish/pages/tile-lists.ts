/** Lists of tiles that go on over several pages: the first in its own form, the others alike. */
import { MorePage, type MorePageProps } from "../../../templates/pages/more-page.tsx";
import type { LeadPicture } from "../../../templates/parts/lead-picture.ts";
import { turnedUrl } from "../../catalogue/addresses.ts";
import { definePage, type Page } from "../page.ts";
import type { Site } from "./site.ts";
import { type Cut, cutEach, cutGroups, type Group, tilesOnAPage } from "./turning.ts";

/** A list of tiles by their codes, and what its further pages say of all of them. */
export interface TileList extends Pick<MorePageProps, "title" | "sentence" | "section" | "loud"> {
  readonly url: string;
  readonly groups: readonly Group<string>[];
  /** So many of each group on the first page; left out where it shows as many as any. */
  readonly firstOfEach?: number;
  /** The same choice on the wall, as the part of its address after `?`; null where it has none. */
  readonly wall: string | null;
  /** What is to be said of the tiles of a group that a page shows. */
  readonly noteOf?: (codes: readonly string[]) => string | null;
}

/** What the first page of a list shows of it. */
export interface FirstTiles extends Pick<MorePageProps, "groups" | "turn" | "wall"> {
  /** The first photograph on it; null where no tile has one. */
  readonly lead: LeadPicture | null;
}

/** All pages of a list of tiles; the first is made by whoever knows what else stands on it. */
export function pagesOfTiles(
  site: Site,
  list: TileList,
  makeFirst: (tiles: FirstTiles) => Page,
): readonly Page[] {
  const [first, ...more] = cutList(list).map((cut) => shownTiles(site, list, cut));
  if (!first) return [];
  return [makeFirst(first), ...more.map((tiles) => furtherPage(site, list, tiles))];
}

function cutList({ url, groups, firstOfEach }: TileList): readonly Cut<string>[] {
  return firstOfEach === undefined
    ? cutGroups(url, groups, tilesOnAPage)
    : cutEach(url, groups, tilesOnAPage, firstOfEach);
}

function shownTiles(site: Site, { wall, noteOf }: TileList, cut: Cut<string>): FirstTiles {
  const groups = cut.groups.map(({ title, items }) => {
    const note = noteOf?.(items);
    return { title, items: site.entries(items), ...(note && { note }) };
  });
  const lead = site.lead(cut.groups.flatMap(({ items }) => items));
  return { groups, turn: cut.turn, wall, lead };
}

function furtherPage(site: Site, list: TileList, { groups, turn, wall }: FirstTiles): Page {
  const path = turnedUrl(turn.url, turn.here);
  const { title, sentence, section, loud } = list;
  return definePage({
    path,
    component: MorePage,
    props: () => ({
      frame: site.frame(path, turn.url),
      title,
      sentence,
      section,
      ...(loud && { loud }),
      groups,
      turn,
      wall,
    }),
    search: null,
  });
}

/** A choice on the wall, as the part of its address after `?`. */
export function wallWith(choice: Readonly<Record<string, string>>): string {
  return new URLSearchParams(choice).toString();
}

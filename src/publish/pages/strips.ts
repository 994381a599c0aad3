/** The strips of a glaze, as its page shows some of them and pages of their own show all. */
import { SeriesPage } from "../../../templates/pages/series-page.tsx";
import { nameCodes } from "../../../templates/parts/codes.tsx";
import type { GlazeStrips, StripEntry } from "../../../templates/parts/strip.tsx";
import {
  placeWords,
  stripHeading,
  stripName,
  stripSentences,
} from "../../../templates/words/tile/strip.ts";
import { stripsUrl, turnedUrl } from "../../catalogue/addresses.ts";
import type { CatalogueGlaze } from "../../catalogue/glazes.ts";
import { groupBy } from "../../catalogue/group-by.ts";
import { type Strip, stripFinder } from "../../catalogue/strips.ts";
import { definePage, type Page } from "../page.ts";
import type { Site } from "./site.ts";
import { cutGroups } from "./turning.ts";

/** So many values of a strip; so many strips on a page of their own. */
const [mostPlaces, stripsOnAPage] = [8, 8];

/** Of tiles made alike one is shown, and so many more are named. */
const mostNamed = 3;

/** So many photographs of all strips together on a glaze's own page. */
const mostOnItsPage = 16;

/** One strip by each thing that a glaze was tried by, as far as there is room. */
export function stripsOnItsPage(site: Site, { id }: CatalogueGlaze): readonly Strip[] {
  let room = mostOnItsPage;
  return groupBy(stripFinder(site.catalogue)(id), ({ aspect }) => aspect).flatMap(([first]) => {
    room -= Math.min(first.places.length, mostPlaces);
    return room < 0 ? [] : [first];
  });
}

/** The same as the page shows them. */
export function viewStrips(
  site: Site,
  { id, url }: CatalogueGlaze,
  shown: readonly Strip[],
): GlazeStrips {
  return {
    shown: shown.map((strip) => entryOf(site, strip)),
    of: stripFinder(site.catalogue)(id).length,
    url: stripsUrl(url),
  };
}

/** The pages of all strips of a glaze; none where its own shows them all. */
export function stripPages(site: Site, glaze: CatalogueGlaze): readonly Page[] {
  const all = stripFinder(site.catalogue)(glaze.id);
  if (stripsOnItsPage(site, glaze).length === all.length) return [];
  const groups = groupBy(all, ({ aspect }) => aspect);
  const url = stripsUrl(glaze.url);
  const titled = groups.map((group) => ({ title: stripHeading(group[0].aspect), items: group }));
  return cutGroups<Strip>(url, titled, stripsOnAPage).map(({ groups: cut, turn }) => {
    const path = turnedUrl(url, turn.here);
    return definePage({
      path,
      component: SeriesPage,
      props: () => ({
        frame: site.frame(path, url),
        glaze: { name: glaze.name, url: glaze.url },
        hazards: glaze.hazards,
        groups: cut.map(({ title, items }) => ({
          title,
          items: items.map((strip) => entryOf(site, strip)),
        })),
        turn,
      }),
      search: null,
    });
  });
}

function entryOf(site: Site, strip: Strip): StripEntry {
  const { aspect, places } = strip;
  return {
    heading: stripHeading(aspect),
    name: stripName(strip),
    words: stripSentences(strip, site.catalogue.trust),
    cells: places.slice(0, mostPlaces).map((place) => ({
      value: placeWords(aspect, place),
      tile: site.entries([place.tiles[0].id])[0] ?? null,
      more: nameCodes(place.tiles.slice(1), mostNamed),
    })),
    more: Math.max(0, places.length - mostPlaces),
  };
}

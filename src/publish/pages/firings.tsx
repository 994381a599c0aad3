/** Pages of kiln loads, and of the cones that tiles were fired to. */
import { ConePage } from "../../../templates/pages/cone-page.tsx";
import { FiringPage } from "../../../templates/pages/firing-page.tsx";
import { ListPage } from "../../../templates/pages/list-page.tsx";
import { loadSentence } from "../../../templates/words/firing.ts";
import { count } from "../../../templates/words/numbers.ts";
import type { CatalogueCone, CatalogueFiring } from "../../catalogue/types.ts";
import { renderNotes } from "../markdown.ts";
import type { Page } from "../page.ts";
import type { Site } from "./site.ts";

export function firingPages(site: Site): readonly Page[] {
  return [listOfFirings(site), ...site.catalogue.firings.map((firing) => firingPage(site, firing))];
}

function firingPage(site: Site, firing: CatalogueFiring): Page {
  const sentence = loadSentence(firing.record);
  return {
    path: firing.url,
    render: () => (
      <FiringPage
        frame={site.frame(firing.url)}
        firing={firing}
        notesHtml={renderNotes(firing.notes)}
        shelves={firing.shelves.map(({ shelf, tiles }) => ({ shelf, tiles: site.entries(tiles) }))}
      />
    ),
    search: {
      title: firing.id,
      kind: "Firing",
      words: `${sentence} ${firing.notes}`,
      picture: null,
    },
  };
}

function listOfFirings(site: Site): Page {
  const path = "firings/index.html";
  const lines = site.catalogue.firings.map(({ id, url, record }) => ({
    name: id,
    url,
    told: loadSentence(record),
    code: true,
  }));
  return {
    path,
    render: () => (
      <ListPage
        frame={site.frame(path)}
        title="Firings"
        sentence="Every kiln load, the newest first: what was aimed at, and what the cones said."
        section="firings"
        groups={[{ title: "", lines }]}
        empty="No firing is written down yet. A record in tiles/firings/ will stand here."
      />
    ),
    search: null,
  };
}

export function conePages(site: Site): readonly Page[] {
  return [listOfCones(site), ...site.catalogue.cones.flatMap((cone) => pagesOfCone(site, cone))];
}

function pagesOfCone(site: Site, cone: CatalogueCone): readonly Page[] {
  const narrowed = cone.surfaces.map(({ surface, url, tiles }) =>
    conePage(site, cone, url, tiles, surface),
  );
  return [conePage(site, cone, cone.url, cone.tiles, null), ...narrowed];
}

function conePage(
  site: Site,
  cone: CatalogueCone,
  path: string,
  tiles: readonly string[],
  surface: string | null,
): Page {
  return {
    path,
    render: () => (
      <ConePage
        frame={site.frame(path)}
        cone={cone}
        tiles={site.entries(tiles)}
        surface={surface}
      />
    ),
    search: null,
  };
}

function listOfCones(site: Site): Page {
  const path = "cones/index.html";
  const lines = site.catalogue.cones.map(({ cone, url, tiles, surfaces }) => ({
    name: cone,
    url,
    told: `${count(tiles.length, "tile")}: ${surfaces.map((way) => `${way.surface} ${way.tiles.length}`).join(", ")}`,
    code: true,
  }));
  return {
    path,
    render: () => (
      <ListPage
        frame={site.frame(path)}
        title="Cones"
        sentence="The tiles by the cone of their hottest firing after the bisque, from cool to hot."
        section="cones"
        groups={[{ title: "", lines }]}
        empty="No tile has been fired to a cone yet."
      />
    ),
    search: null,
  };
}

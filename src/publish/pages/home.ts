/** The wall, which is the home page, and the pages that stand alone. */
import { AboutPage } from "../../../templates/pages/about-page.tsx";
import { CarePage } from "../../../templates/pages/care-page.tsx";
import { NotFoundPage } from "../../../templates/pages/not-found-page.tsx";
import { ReferencePage } from "../../../templates/pages/reference-page.tsx";
import { WaitingPage } from "../../../templates/pages/waiting-page.tsx";
import { WallPage } from "../../../templates/pages/wall-page.tsx";
import { makeReference } from "../../records/reference.ts";
import { definePage, type Page } from "../page.ts";
import { surfacesFound, surfaceUrl } from "./groups.ts";
import { notFoundPath, type Site } from "./site.ts";

/** A wall longer than this is cut into pages, which a browser can hold and a reader can load. */
export const tilesOnAWall = 600;

export function wallPages(site: Site): readonly Page[] {
  const { tiles, cones, glazes } = site.catalogue;
  const pages = Array.from(
    { length: Math.max(1, Math.ceil(tiles.length / tilesOnAWall)) },
    (_, i) => (i === 0 ? "index.html" : `wall-${i + 1}.html`),
  );
  const ways = {
    cones: cones.map(({ cone, url, tiles: at }) => ({ name: cone, url, tiles: at.length })),
    surfaces: surfacesFound(site).map(({ surface, tiles: of }) => ({
      name: surface,
      url: surfaceUrl(surface),
      tiles: of.length,
    })),
    glazes: glazes
      .filter((glaze) => glaze.tiles.length > 0)
      .map(({ name, url, tiles: on }) => ({ name, url, tiles: on.length })),
  };
  return pages.map((path, here) => {
    const shown = tiles.slice(here * tilesOnAWall, (here + 1) * tilesOnAWall);
    return definePage({
      path,
      component: WallPage,
      props: {
        frame: site.frame(path),
        total: tiles.length,
        tiles: site.entries(shown.map((tile) => tile.id)),
        ...ways,
        pages,
        here,
      },
      search: null,
    });
  });
}

export function standingPages(site: Site): readonly Page[] {
  const { studio, tiles, glazes } = site.catalogue;
  const frame = site.frame;
  const reference = makeReference();
  return [
    definePage({
      path: "care.html",
      component: CarePage,
      props: { frame: frame("care.html") },
      search: () => ({
        title: "Care",
        kind: "Page",
        words: "dust food fumes kilns",
        picture: null,
      }),
    }),
    definePage({
      path: "about.html",
      component: AboutPage,
      props: {
        frame: frame("about.html"),
        studio,
        tiles: tiles.length,
        glazes: glazes.length,
      },
      search: null,
    }),
    definePage({
      path: "reference.html",
      component: ReferencePage,
      props: { frame: frame("reference.html"), reference },
      search: null,
    }),
    definePage({
      path: notFoundPath,
      component: NotFoundPage,
      props: { frame: { ...frame(notFoundPath), canonical: null } },
      search: null,
    }),
    ...waitingPages(site),
  ];
}

/** What was left out until it is mended; no page where nothing was. */
function waitingPages({ frame, waiting }: Site): readonly Page[] {
  if (waiting.length === 0) return [];
  const path = "waiting.html";
  const props = { frame: frame(path), waiting };
  return [definePage({ path, component: WaitingPage, props, search: null })];
}

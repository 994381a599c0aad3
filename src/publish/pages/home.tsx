/** The wall, which is the home page, and the pages that stand alone. */
import { AboutPage } from "../../../templates/pages/about-page.tsx";
import { CarePage } from "../../../templates/pages/care-page.tsx";
import { NotFoundPage } from "../../../templates/pages/not-found-page.tsx";
import { ReferencePage } from "../../../templates/pages/reference-page.tsx";
import { WaitingPage } from "../../../templates/pages/waiting-page.tsx";
import { WallPage } from "../../../templates/pages/wall-page.tsx";
import { makeReference } from "../../records/reference.ts";
import type { Page } from "../page.ts";
import { surfacesFound, surfaceUrl } from "./groups.tsx";
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
    return {
      path,
      render: () => (
        <WallPage
          frame={site.frame(path)}
          total={tiles.length}
          tiles={site.entries(shown.map((tile) => tile.id))}
          {...ways}
          pages={pages}
          here={here}
        />
      ),
      search: null,
    };
  });
}

export function standingPages(site: Site): readonly Page[] {
  const { studio, tiles, glazes } = site.catalogue;
  const frame = site.frame;
  const reference = makeReference();
  return [
    {
      path: "care.html",
      render: () => <CarePage frame={frame("care.html")} />,
      search: { title: "Care", kind: "Page", words: "dust food fumes kilns", picture: null },
    },
    {
      path: "about.html",
      render: () => (
        <AboutPage
          frame={frame("about.html")}
          studio={studio}
          tiles={tiles.length}
          glazes={glazes.length}
        />
      ),
      search: null,
    },
    {
      path: "reference.html",
      render: () => <ReferencePage frame={frame("reference.html")} reference={reference} />,
      search: null,
    },
    {
      path: notFoundPath,
      render: () => <NotFoundPage frame={{ ...frame(notFoundPath), canonical: null }} />,
      search: null,
    },
    ...waitingPages(site),
  ];
}

/** What was left out until it is mended; no page where nothing was. */
function waitingPages({ frame, waiting }: Site): readonly Page[] {
  if (waiting.length === 0) return [];
  const path = "waiting.html";
  const render = () => <WaitingPage frame={frame(path)} waiting={waiting} />;
  return [{ path, render, search: null }];
}

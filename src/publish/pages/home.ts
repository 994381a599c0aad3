/** The wall, which is the home page, and the pages that stand alone. */
import { AboutPage } from "../../../templates/pages/about-page.tsx";
import { CarePage } from "../../../templates/pages/care-page.tsx";
import { NotFoundPage } from "../../../templates/pages/not-found-page.tsx";
import { ReferencePage } from "../../../templates/pages/reference-page.tsx";
import { WaitingPage } from "../../../templates/pages/waiting-page.tsx";
import { WallPage, type WaysIn } from "../../../templates/pages/wall-page.tsx";
import { turnedUrl } from "../../catalogue/addresses.ts";
import type { CatalogueTile } from "../../catalogue/tiles.ts";
import { makeReference } from "../../records/reference.ts";
import { manifestPath } from "../data/site-data.ts";
import { facetsThatDiffer } from "../facet-values.ts";
import { definePage, type Page } from "../page.ts";
import { surfacesFound, surfaceUrl } from "./groups.ts";
import { notFoundPath, type Site } from "./site.ts";
import { cutGroups, tilesOnAPage } from "./turning.ts";

/** Home shows fewer tiles than a page of the wall: who looks for one begins with the ways in. */
const tilesAtHome = 24;

/** So many glazes are named at home, those on most tiles; their list has the others. */
const glazesAtHome = 24;

export function wallPages(site: Site): readonly Page[] {
  const url = "index.html";
  const codes = site.catalogue.tiles.map(({ id }) => id);
  const cuts = cutGroups(url, [{ title: "", items: codes }], tilesOnAPage, tilesAtHome);
  const ways = waysIn(site);
  const finder = {
    facets: facetsThatDiffer(site.catalogue),
    near: site.catalogue.tiles.some(({ colour }) => colour !== null),
    sorts: sortsThatDiffer(site.catalogue.tiles),
  };
  return cuts.map(({ groups, turn }) => {
    const path = turnedUrl(url, turn.here);
    return definePage({
      path,
      component: WallPage,
      props: () => ({
        frame: site.frame(path),
        welcome: turn.here === 0 ? site.catalogue.own.welcome : null,
        alone: turn.here === 0 ? aloneOf(site) : null,
        total: codes.length,
        tiles: site.entries(groups.flatMap(({ items }) => items)),
        manifest: turn.here === 0 && !site.catalogue.studio.unlisted ? manifestPath : null,
        lead: site.lead(groups.flatMap(({ items }) => items)),
        ways: turn.here === 0 ? ways : null,
        turn,
        cut: { first: tilesAtHome, later: tilesOnAPage },
        finder,
      }),
      search: null,
    });
  });
}

function aloneOf({ catalogue: { studio, tiles } }: Site) {
  if (studio.alone === null || tiles.length === 0) return null;
  const { name, url } = studio.alone.set;
  return { name, url };
}

/** The orders in which the wall would not stand as it does. */
function sortsThatDiffer(tiles: readonly CatalogueTile[]): readonly ("run" | "date")[] {
  const differ = (of: (tile: CatalogueTile) => unknown) => new Set(tiles.map(of)).size > 1;
  return [
    ...(differ(({ run }) => run) ? (["run"] as const) : []),
    ...(differ(({ glazed }) => glazed) ? (["date"] as const) : []),
  ];
}

function waysIn(site: Site): WaysIn {
  const { cones, glazes } = site.catalogue;
  const used = glazes.filter(({ tiles }) => tiles.length > 0);
  const byUse = [...used].sort((a, b) => b.tiles.length - a.tiles.length);
  const named = new Set(byUse.slice(0, glazesAtHome));
  return {
    cones: cones.map(({ cone, url, tiles: at }) => ({ name: cone, url, tiles: at.length })),
    surfaces: surfacesFound(site).map(({ surface, tiles: of }) => ({
      name: surface,
      url: surfaceUrl(surface),
      tiles: of.length,
    })),
    glazes: glazes
      .filter((glaze) => named.has(glaze))
      .map(({ name, url, tiles: on }) => ({ name, url, tiles: on.length })),
    allGlazes: used.length > named.size ? glazes.length : null,
  };
}

export function standingPages(site: Site): readonly Page[] {
  const { studio, tiles, glazes } = site.catalogue;
  const frame = site.frame;
  return [
    definePage({
      path: "care.html",
      component: CarePage,
      props: () => ({ frame: frame("care.html") }),
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
      props: () => ({
        frame: frame("about.html"),
        studio,
        tiles: tiles.length,
        glazes: glazes.length,
      }),
      search: null,
    }),
    definePage({
      path: "reference.html",
      component: ReferencePage,
      props: () => ({ frame: frame("reference.html"), reference: makeReference() }),
      search: null,
    }),
    definePage({
      path: notFoundPath,
      component: NotFoundPage,
      props: () => ({ frame: { ...frame(notFoundPath), canonical: null } }),
      search: null,
    }),
    ...waitingPages(site),
  ];
}

/** So many records on a page of what waits, each with its faults. */
const waitingOnAPage = 60;

/** What was left out until it is mended; no page where nothing was. */
function waitingPages({ frame, waiting }: Site): readonly Page[] {
  if (waiting.length === 0) return [];
  const url = "waiting.html";
  const groups = [
    { title: "Mend these", items: waiting.filter(({ faults }) => faults.length > 0) },
    {
      title: "These come back by themselves",
      items: waiting.filter(({ faults }) => faults.length === 0),
    },
  ];
  return cutGroups(url, groups, waitingOnAPage).map((cut) => {
    const path = turnedUrl(url, cut.turn.here);
    return definePage({
      path,
      component: WaitingPage,
      props: () => ({ frame: frame(path, url), ...cut }),
      search: null,
    });
  });
}

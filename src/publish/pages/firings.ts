/** Pages of kiln loads, and of the cones that tiles were fired to. */
import { ConePage } from "../../../templates/pages/cone-page.tsx";
import { FiringPage } from "../../../templates/pages/firing-page.tsx";
import { FiringsPage } from "../../../templates/pages/firings-page.tsx";
import { ListPage } from "../../../templates/pages/list-page.tsx";
import { count } from "../../../templates/words/english/numbers.ts";
import { loadSentence } from "../../../templates/words/firing/load.ts";
import { storyHeading } from "../../../templates/words/firing/story.ts";
import type { CatalogueCone } from "../../catalogue/cones.ts";
import type { CatalogueGlaze } from "../../catalogue/glazes.ts";
import type { CatalogueFiring } from "../../catalogue/kilns/firings.ts";
import { firingsOf } from "../../catalogue/kilns/tile-firings.ts";
import { fumesOf } from "../../catalogue/minding.ts";
import { idKey } from "../../terms/ids.ts";
import { definePage, type Page, type SearchEntry } from "../page.ts";
import { controlsBeside } from "./controls.ts";
import type { Site } from "./site.ts";

export function firingPages(site: Site): readonly Page[] {
  return [listOfFirings(site), ...site.catalogue.firings.map((firing) => firingPage(site, firing))];
}

function firingPage(site: Site, firing: CatalogueFiring): Page {
  return definePage({
    path: firing.url,
    component: FiringPage,
    props: {
      frame: site.frame(firing.url),
      firing,
      unit: site.catalogue.studio.temperature,
      shelves: firing.shelves.map(({ shelf, tiles }) => ({
        shelf,
        tiles: site.entries(tiles),
        since: tiles.filter((code) => wasFiredAgain(site, code, firing.id)),
      })),
      fumes: fumesOf(glazesInLoad(site, firing), firing.atmosphere),
      controls: controlsBeside(site, firing.id),
    },
    search: (props) => searchFiring(props.firing),
  });
}

function searchFiring(firing: CatalogueFiring): SearchEntry {
  const words = `${loadSentence(firing)} ${storyHeading(firing)}. ${firing.notes}`;
  return { title: firing.id, kind: "Firing", words, picture: null };
}

/** The glazes of a load by name, each once; of a bisque load none, for they come later. */
function glazesInLoad({ catalogue }: Site, firing: CatalogueFiring): readonly CatalogueGlaze[] {
  if (firing.kind === "bisque") return [];
  const codes = firing.shelves.flatMap(({ tiles }) => tiles);
  const tiles = codes.flatMap((code) => catalogue.tileById.get(idKey(code)) ?? []);
  const ids = new Set(tiles.flatMap(({ glazes }) => Object.keys(glazes)));
  return catalogue.glazes.filter(({ id }) => ids.has(id));
}

/** Whether a tile with a photograph has been in a glaze firing after this one. */
function wasFiredAgain({ catalogue }: Site, code: string, firing: string): boolean {
  const tile = catalogue.tileById.get(idKey(code));
  const firings = firingsOf(tile?.steps ?? []);
  const last = firings.findLast(({ kind }) => kind !== "bisque")?.page;
  const here = firings.some(({ kind, page }) => kind !== "bisque" && page?.id === firing);
  return here && last?.id !== firing && tile?.stage === "recorded";
}

function listOfFirings(site: Site): Page {
  const path = "firings/index.html";
  const { firings, kilns } = site.catalogue;
  return definePage({
    path,
    component: FiringsPage,
    props: { frame: site.frame(path), firings, kilns },
    search: null,
  });
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
  return definePage({
    path,
    component: ConePage,
    props: {
      frame: site.frame(path),
      cone,
      tiles: site.entries(tiles),
      surface,
      map: site.catalogue.maps.find((map) => map.cone === cone.cone)?.url ?? null,
    },
    search: null,
  });
}

function listOfCones(site: Site): Page {
  const path = "cones/index.html";
  const lines = site.catalogue.cones.map(({ cone, url, tiles, surfaces }) => ({
    name: cone,
    url,
    told: `${count(tiles.length, "tile")}: ${surfaces.map((way) => `${way.surface} ${way.tiles.length}`).join(", ")}`,
    code: true,
  }));
  return definePage({
    path,
    component: ListPage,
    props: {
      frame: site.frame(path),
      title: "Cones",
      sentence: "Tiles by the cone of their hottest firing after the bisque, from cool to hot.",
      section: "cones",
      groups: [{ title: "", lines }],
      empty: "No tile has been fired to a cone yet.",
    },
    search: null,
  });
}

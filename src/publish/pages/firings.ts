/** Pages of kiln loads, and of the cones that tiles were fired to. */
import {
  ConePage,
  type ConeWays,
  coneSentence,
  coneTitle,
} from "../../../templates/pages/cone-page.tsx";
import { FiringPage } from "../../../templates/pages/firing-page.tsx";
import { FiringsPage, firingsSentence } from "../../../templates/pages/firings-page.tsx";
import { shadeGapWords } from "../../../templates/words/clay/clay.ts";
import { count } from "../../../templates/words/english/numbers.ts";
import { shelfTitle } from "../../../templates/words/firing/kiln.ts";
import { firedAgainSentence, loadSentence } from "../../../templates/words/firing/load.ts";
import { storyHeading } from "../../../templates/words/firing/story.ts";
import { turnedUrl } from "../../catalogue/addresses.ts";
import { shadesMissingAt } from "../../catalogue/clay-gaps.ts";
import type { CatalogueCone } from "../../catalogue/cones.ts";
import type { CatalogueGlaze } from "../../catalogue/glazes.ts";
import type { CatalogueFiring } from "../../catalogue/kilns/firings.ts";
import { firingsOf } from "../../catalogue/kilns/tile-firings.ts";
import { fumesOf } from "../../catalogue/minding.ts";
import { tilesByCode } from "../../catalogue/tiles-by-code.ts";
import { coneSlug } from "../../terms/cones.ts";
import { idKey } from "../../terms/ids.ts";
import { definePage, type Page, type SearchEntry } from "../page.ts";
import { controlsBeside } from "./controls.ts";
import { toFiringLine } from "./firing-lines.ts";
import { pagesOfLines } from "./line-lists.ts";
import { recordFoot } from "./record-foot.ts";
import type { Site } from "./site.ts";
import { pagesOfTiles, type TileList, wallWith } from "./tile-lists.ts";
import { cutGroups, firingsOnAPage } from "./turning.ts";

export function firingPages(site: Site): readonly Page[] {
  const { firings } = site.catalogue;
  return [...listOfFirings(site), ...firings.flatMap((firing) => firingPage(site, firing))];
}

function firingPage(site: Site, firing: CatalogueFiring): readonly Page[] {
  const list = tilesOfLoad(site, firing);
  const { controls, others } = controlsBeside(site, firing.id);
  return pagesOfTiles(site, list, ({ groups, turn, lead }) =>
    definePage({
      path: firing.url,
      component: FiringPage,
      props: () => ({
        frame: site.frame(firing.url),
        firing: { ...firing, shelves: [] },
        unit: site.catalogue.studio.temperature,
        groups,
        turn,
        lead,
        fumes: fumesOf(glazesInLoad(site, firing), firing.atmosphere),
        controls,
        otherControls: others,
        foot: recordFoot(site, firing.url, firing.id),
      }),
      search: (props) => searchFiring(props.firing),
    }),
  );
}

function searchFiring(firing: CatalogueFiring): SearchEntry {
  const words = `${loadSentence(firing)} ${storyHeading(firing)}. ${firing.notes}`;
  return { title: firing.id, kind: "Firing", words, picture: null };
}

/** What was in a load, shelf by shelf. */
function tilesOfLoad(site: Site, firing: CatalogueFiring): TileList {
  return {
    url: firing.url,
    title: `Firing ${firing.id}`,
    sentence: loadSentence(firing),
    section: "firings",
    groups: firing.shelves.map(({ shelf, tiles }) => ({
      title: shelf === null ? "Shelf not recorded" : shelfTitle(shelf),
      items: tiles,
    })),
    wall: null,
    noteOf: (codes) =>
      firedAgainSentence(codes.filter((code) => wasFiredAgain(site, code, firing.id))),
  };
}

/** The glazes of a load by name, each once; of a bisque load none, for they come later. */
function glazesInLoad({ catalogue }: Site, firing: CatalogueFiring): readonly CatalogueGlaze[] {
  if (firing.kind === "bisque") return [];
  const codes = firing.shelves.flatMap(({ tiles }) => tiles);
  const tiles = tilesByCode(catalogue, codes);
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

function listOfFirings(site: Site): readonly Page[] {
  const { firings } = site.catalogue;
  const url = "firings/index.html";
  return cutGroups(url, [{ title: "", items: firings }], firingsOnAPage).map(({ groups, turn }) => {
    const path = turnedUrl(url, turn.here);
    return definePage({
      path,
      component: FiringsPage,
      props: () => ({
        frame: site.frame(path, url),
        title: "Firings",
        sentence: firingsSentence,
        firings: groups.flatMap(({ items }) => items.map(toFiringLine)),
        turn,
        kilns: kilnLinks(site),
      }),
      search: null,
    });
  });
}

/** More kilns than this are not named above the list of firings, but on the lines of theirs. */
const mostKilns = 40;

function kilnLinks({ catalogue: { kilns } }: Site) {
  const byUse = [...kilns].sort((a, b) => b.firings.length - a.firings.length);
  const named = new Set(byUse.slice(0, mostKilns));
  return kilns
    .filter((kiln) => named.has(kiln))
    .map(({ name, url, firings }) => ({ name, url, firings: firings.length }));
}

export function conePages(site: Site): readonly Page[] {
  return [...listOfCones(site), ...site.catalogue.cones.flatMap((cone) => pagesOfCone(site, cone))];
}

function pagesOfCone(site: Site, cone: CatalogueCone): readonly Page[] {
  const narrowed = cone.surfaces.flatMap(({ surface, url, tiles }) =>
    conePage(site, cone, url, tiles, surface),
  );
  return [...conePage(site, cone, cone.url, cone.tiles, null), ...narrowed];
}

function conePage(
  site: Site,
  cone: CatalogueCone,
  path: string,
  tiles: readonly string[],
  surface: string | null,
): readonly Page[] {
  const waiting = surface === null ? cone.waiting : 0;
  const list: TileList = {
    url: path,
    title: coneTitle(cone.cone, surface),
    sentence: coneSentence(cone.cone, surface, { fired: tiles.length - waiting, waiting }),
    section: "cones",
    groups: [{ title: "", items: tiles }],
    wall: wallWith({ cone: coneSlug(cone.cone), ...(surface !== null && { surface }) }),
  };
  const map = site.catalogue.maps.find((one) => one.cone === cone.cone)?.url ?? null;
  return pagesOfTiles(site, list, (shown) =>
    definePage({
      path,
      component: ConePage,
      props: () => ({
        frame: site.frame(path),
        cone: waysOf(cone),
        ...shown,
        sentence: list.sentence,
        surface,
        gaps: surface === null ? gapsAt(site, cone) : [],
        map,
      }),
      search: null,
    }),
  );
}

function gapsAt({ catalogue }: Site, cone: CatalogueCone) {
  return shadesMissingAt(cone, catalogue).map((gap) => shadeGapWords(gap, cone.cone));
}

function waysOf({ cone, url, tiles, surfaces }: CatalogueCone): ConeWays {
  const ways = surfaces.map((way) => ({ ...way, tiles: way.tiles.length }));
  return { cone, url, tiles: tiles.length, surfaces: ways };
}

function listOfCones(site: Site): readonly Page[] {
  const lines = site.catalogue.cones.map(({ cone, url, tiles, surfaces }) => ({
    name: cone,
    url,
    told: `${count(tiles.length, "tile")}: ${surfaces.map((way) => `${way.surface} ${way.tiles.length}`).join(", ")}`,
    code: true,
  }));
  return pagesOfLines(site, {
    url: "cones/index.html",
    title: "Cones",
    many: "cones",
    sentence: "Tiles by the cone of their hottest firing after the bisque, from cool to hot.",
    section: "cones",
    groups: [{ title: "", items: lines }],
    empty: "No tile has been fired to a cone yet.",
  });
}

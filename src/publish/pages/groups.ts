/** Pages of clays, sets, makers and surfaces. */
import { SetPage, type SetPageProps, setSentence } from "../../../templates/pages/set-page.tsx";
import { SurfacePage } from "../../../templates/pages/surface-page.tsx";
import { TilesPage, type TilesPageProps } from "../../../templates/pages/tiles-page.tsx";
import {
  clayFacts,
  claySentence,
  coneGapWords,
  shadeTitle,
} from "../../../templates/words/clay/clay.ts";
import { capital, count } from "../../../templates/words/english/numbers.ts";
import { leftOutForFamilies, shownSentence } from "../../../templates/words/site/alone.ts";
import { sheetKinds, sheetNames } from "../../../templates/words/site/sheets.ts";
import { bookUrl, sheetsUrl } from "../../catalogue/addresses.ts";
import { conesMissingFor } from "../../catalogue/clay-gaps.ts";
import type { CatalogueClay } from "../../catalogue/clays.ts";
import type { CatalogueSet } from "../../catalogue/sets.ts";
import { tilesByCode } from "../../catalogue/tiles-by-code.ts";
import { shades, surfaces } from "../../terms/choices.ts";
import { idSlug } from "../../terms/ids.ts";
import { indexBy } from "../../terms/index-by.ts";
import { definePage, type Page, type SearchEntry } from "../page.ts";
import { askedTables } from "./asked.ts";
import { foundBySet } from "./found-out.ts";
import { pagesOfLines } from "./line-lists.ts";
import { recordFoot } from "./record-foot.ts";
import { setBlends } from "./set-blends.ts";
import { hasSheets } from "./sheets.ts";
import type { Site } from "./site.ts";
import { setSquare } from "./square.ts";
import { pagesOfTiles, type TileList, wallWith } from "./tile-lists.ts";

export function clayPages(site: Site): readonly Page[] {
  const { clays } = site.catalogue;
  const groups = [...shades.toReversed(), null].map((shade) => ({
    title: shadeTitle(shade),
    items: clays.filter((clay) => (clay.shade?.shade ?? null) === shade).map(lineOf),
  }));
  const list = pagesOfLines(site, {
    url: "clays/index.html",
    many: "clays",
    title: "Clays",
    sentence: "The clays under the glazes.",
    section: "clays",
    groups: groups.filter(({ items }) => items.length > 0),
    empty: "No clays yet. Add a record in recipes/clays/ and it shows here.",
  });
  return [...list, ...clays.flatMap((clay) => clayPage(site, clay))];
}

function lineOf(clay: CatalogueClay) {
  const { name, url, tiles } = clay;
  return { name, url, told: `${claySentence(clay)} ${count(tiles.length, "tile")}.` };
}

function clayPage(site: Site, clay: CatalogueClay): readonly Page[] {
  const { name, url, notes } = clay;
  const list: TileList = {
    url,
    title: name,
    sentence: claySentence(clay),
    section: "clays",
    groups: [{ title: "", items: clay.tiles }],
    wall: wallWith({ clay: idSlug(clay.id) }),
  };
  return tilesPages(site, list, {
    facts: clayFacts(clay),
    gaps: conesMissingFor(clay, site.catalogue).map(coneGapWords),
    notes,
    about: name,
    empty: "No tile of it is here yet.",
    search: (props) => ({
      title: props.title,
      kind: "Clay",
      words: props.notes ?? "",
      picture: null,
    }),
  });
}

interface OnTheFirst extends Pick<TilesPageProps, "facts" | "notes" | "gaps" | "empty"> {
  /** Told to a page of a record. */
  readonly about?: string;
  readonly search: ((props: TilesPageProps) => SearchEntry) | null;
}

/** The pages of a list of tiles with what the first alone says besides. */
function tilesPages(site: Site, list: TileList, onTheFirst: OnTheFirst): readonly Page[] {
  const { search, about, ...more } = onTheFirst;
  const { url, title, sentence, section } = list;
  return pagesOfTiles(site, list, (tiles) =>
    definePage({
      path: url,
      component: TilesPage,
      props: () => ({
        ...{ frame: site.frame(url), title, sentence, section, ...tiles, ...more },
        foot: about === undefined ? null : recordFoot(site, url, about),
      }),
      search,
    }),
  );
}

export function setPages(site: Site): readonly Page[] {
  const { sets } = site.catalogue;
  const lines = sets.map((set) => ({ name: set.name, url: set.url, told: setSentence(set) }));
  const list = pagesOfLines(site, {
    url: "sets/index.html",
    many: "sets",
    title: "Sets",
    sentence: "Classes, terms and series of tests, the newest first.",
    section: "sets",
    groups: [{ title: "", items: lines }],
    empty: "No sets yet. Add a folder in tiles/ with a set.md and it shows here.",
  });
  return [...list, ...sets.flatMap((set) => setPage(site, set))];
}

/** So many tiles below what a set asked, whose tables show some of them already. */
const tilesBesideQuestions = 24;

function setPage(site: Site, set: CatalogueSet): readonly Page[] {
  const square = setSquare(site, set.tiles);
  const blends = setBlends(site, set);
  const asked = askedTables(site, set.tiles);
  const isLaidOut = asked.length > 0 || square !== null || blends.length > 0;
  const { name, url, notes } = set;
  const [control = null] = set.control === null ? [] : site.entries([set.control]);
  const list: TileList = {
    url,
    title: name,
    sentence: [setSentence(set), shownOfAll(site, set)].filter(Boolean).join(" "),
    section: "sets",
    groups: [{ title: "", items: set.tiles }],
    ...(isLaidOut && { firstOfEach: tilesBesideQuestions }),
    wall: wallWith({ set: idSlug(set.id) }),
  };
  return pagesOfTiles(site, list, (tiles) =>
    definePage({
      path: url,
      component: SetPage,
      props: () => ({
        frame: site.frame(url),
        set: {
          id: set.id,
          name,
          sentence: list.sentence,
          notes,
          teacher: set.teacher?.name ?? null,
        },
        ...tiles,
        control,
        square,
        asked,
        foundOut: foundBySet(site, set),
        grid: gridAtCone(site, set),
        ...{ blends, foot: recordFoot(site, url, name) },
        sheets: [...bookLink(set), ...(hasSheets(site, set) ? sheetLinks(set) : [])],
      }),
      search: (props) => ({
        title: props.set.name,
        kind: "Set",
        words: props.set.notes,
        picture: null,
      }),
    }),
  );
}

/** What a site that holds a part of the set says of that; null where all of it is here. */
function shownOfAll({ catalogue: { studio } }: Site, { tiles }: CatalogueSet): string | null {
  if (studio.alone === null) return null;
  const shown = shownSentence(tiles.length, studio.alone.tiles);
  return studio.alone.forFamilies ? [shown, leftOutForFamilies].filter(Boolean).join(" ") : shown;
}

function bookLink({ id, tiles }: CatalogueSet) {
  return tiles.length > 0 ? [{ name: "Book", url: bookUrl(id) }] : [];
}

/** The grid at the cone that most of the set's tiles have; null where no glaze of it lies on another. */
function gridAtCone({ catalogue }: Site, { tiles: codes }: CatalogueSet): SetPageProps["grid"] {
  const tiles = tilesByCode(catalogue, codes).filter(({ pairs }) => pairs.length > 0);
  const [first] = [...indexBy(tiles, ({ cone }) => (cone === null ? [] : [cone]))].toSorted(
    ([, a], [, b]) => b.length - a.length,
  );
  return first ? { cone: first[0], url: `grid.html?cone=${idSlug(first[0])}` } : null;
}

function sheetLinks({ id }: CatalogueSet) {
  return sheetKinds.map((what) => ({ name: sheetNames[what], url: sheetsUrl(what, id) }));
}

export function makerPages(site: Site): readonly Page[] {
  const { makers } = site.catalogue;
  const list = pagesOfLines(site, {
    url: "makers/index.html",
    many: "makers",
    title: "Makers",
    sentence: "Makers who asked to be named beside their tiles.",
    groups: [
      {
        title: "",
        items: makers.map(({ name, url, tiles }) => ({
          name,
          url,
          told: count(tiles.length, "tile"),
        })),
      },
    ],
    empty: "No maker here has asked to be named.",
  });
  const pages = makers.flatMap(({ name, url, tiles }) =>
    tilesPages(
      site,
      {
        url,
        title: name,
        sentence: `${count(tiles.length, "tile")} glazed by ${name}.`,
        groups: [{ title: "", items: tiles }],
        wall: wallWith({ maker: idSlug(name) }),
      },
      { empty: "", search: null },
    ),
  );
  return [...list, ...pages];
}

export const surfaceUrl = (surface: string) => `surfaces/${surface}.html`;

/** So many tiles of a surface at each cone at most, and so many at all cones together. */
const [mostAtACone, mostAtAllCones] = [14, 84];

export function surfacePages(site: Site): readonly Page[] {
  return surfacesFound(site).map((found) => surfacePage(site, found));
}

/** The first tiles at each cone; the others stand on the pages of the cone with that surface. */
function surfacePage(
  site: Site,
  { surface, tiles }: ReturnType<typeof surfacesFound>[number],
): Page {
  const path = surfaceUrl(surface);
  const cones = site.catalogue.cones.flatMap(({ cone, surfaces: ways }) => {
    const way = ways.find((one) => one.surface === surface);
    return way ? [{ title: `Cone ${cone}`, codes: way.tiles, url: way.url }] : [];
  });
  const noCone = tiles.filter(({ cone }) => cone === null).map(({ id }) => id);
  const wall = wallWith({ surface });
  const groups = [
    ...cones,
    { title: "Cone not recorded", codes: noCone, url: `index.html?${wall}` },
  ].filter(({ codes }) => codes.length > 0);
  const most = Math.max(2, Math.min(mostAtACone, Math.floor(mostAtAllCones / groups.length)));
  return definePage({
    path,
    component: SurfacePage,
    props: () => ({
      frame: site.frame(path),
      title: capital(surface),
      sentence: `${count(tiles.length, "tile")} with a ${surface} surface, by cone.`,
      groups: groups.map(({ title, codes, url }) => ({
        title,
        url,
        tiles: codes.length,
        shown: site.entries(codes.slice(0, most)),
      })),
      wall,
    }),
    search: null,
  });
}

/** The surfaces that came out, each with its tiles. */
export function surfacesFound(site: Site) {
  return surfaces
    .map((surface) => ({
      surface,
      tiles: site.catalogue.tiles.filter((tile) => tile.surface.includes(surface)),
    }))
    .filter(({ tiles }) => tiles.length > 0);
}

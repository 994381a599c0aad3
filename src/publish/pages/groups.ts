/** Pages of clays, sets, makers and surfaces. */
import { ListPage, type ListPageProps } from "../../../templates/pages/list-page.tsx";
import { SetPage, setSentence } from "../../../templates/pages/set-page.tsx";
import { TilesPage } from "../../../templates/pages/tiles-page.tsx";
import { clayFacts, claySentence } from "../../../templates/words/clay/clay.ts";
import { capital, count } from "../../../templates/words/english/numbers.ts";
import type { CatalogueClay } from "../../catalogue/clays.ts";
import type { CatalogueSet } from "../../catalogue/sets.ts";
import { surfaces } from "../../terms/choices.ts";
import { definePage, type Page } from "../page.ts";
import { askedTables } from "./asked.ts";
import type { Site } from "./site.ts";

function listPage(site: Site, path: string, props: Omit<ListPageProps, "frame">): Page {
  const framed = { frame: site.frame(path), ...props };
  return definePage({ path, component: ListPage, props: framed, search: null });
}

export function clayPages(site: Site): readonly Page[] {
  const { clays } = site.catalogue;
  const lines = clays.map((clay) => ({
    name: clay.name,
    url: clay.url,
    told: `${claySentence(clay)} ${count(clay.tiles.length, "tile")}.`,
  }));
  const list = listPage(site, "clays/index.html", {
    title: "Clays",
    sentence: "The clays under the glazes.",
    section: "clays",
    groups: [{ title: "", lines }],
    empty: "No clays yet. Add a record in recipes/clays/ and it shows here.",
  });
  return [list, ...clays.map((clay) => clayPage(site, clay))];
}

function clayPage(site: Site, clay: CatalogueClay): Page {
  return definePage({
    path: clay.url,
    component: TilesPage,
    props: {
      frame: site.frame(clay.url),
      title: clay.name,
      sentence: claySentence(clay),
      section: "clays",
      facts: clayFacts(clay),
      notes: clay.notes,
      groups: [{ title: "", tiles: site.entries(clay.tiles) }],
      empty: "No tile of it is here yet.",
    },
    search: ({ title, notes = "" }) => ({ title, kind: "Clay", words: notes, picture: null }),
  });
}

export function setPages(site: Site): readonly Page[] {
  const { sets } = site.catalogue;
  const lines = sets.map((set) => ({ name: set.name, url: set.url, told: setSentence(set) }));
  const list = listPage(site, "sets/index.html", {
    title: "Sets",
    sentence: "Classes, terms and series of tests, the newest first.",
    section: "sets",
    groups: [{ title: "", lines }],
    empty: "No sets yet. Add a folder in tiles/ with a set.md and it shows here.",
  });
  return [list, ...sets.map((set) => setPage(site, set))];
}

function setPage(site: Site, set: CatalogueSet): Page {
  const [control = null] = set.control === null ? [] : site.entries([set.control]);
  return definePage({
    path: set.url,
    component: SetPage,
    props: {
      frame: site.frame(set.url),
      set,
      tiles: site.entries(set.tiles),
      control,
      asked: askedTables(site, set.tiles),
      blends: site.catalogue.blends.filter(({ layouts }) =>
        layouts.some((layout) => layout.set?.id === set.id),
      ),
    },
    search: (props) => ({
      title: props.set.name,
      kind: "Set",
      words: props.set.notes,
      picture: null,
    }),
  });
}

export function makerPages(site: Site): readonly Page[] {
  const { makers } = site.catalogue;
  const list = listPage(site, "makers/index.html", {
    title: "Makers",
    sentence: "Makers who asked to be named beside their tiles.",
    groups: [
      {
        title: "",
        lines: makers.map(({ name, url, tiles }) => ({
          name,
          url,
          told: count(tiles.length, "tile"),
        })),
      },
    ],
    empty: "No maker here has asked to be named.",
  });
  const pages = makers.map(({ name, url, tiles }) =>
    definePage({
      path: url,
      component: TilesPage,
      props: {
        frame: site.frame(url),
        title: name,
        sentence: `${count(tiles.length, "tile")} glazed by ${name}.`,
        groups: [{ title: "", tiles: site.entries(tiles) }],
        empty: "",
      },
      search: null,
    }),
  );
  return [list, ...pages];
}

export const surfaceUrl = (surface: string) => `surfaces/${surface}.html`;

export function surfacePages(site: Site): readonly Page[] {
  return surfacesFound(site).map(({ surface, tiles }) => {
    const path = surfaceUrl(surface);
    const byCone = site.catalogue.cones.map((cone) => ({
      title: `Cone ${cone.cone}`,
      tiles: site.entries(cone.surfaces.find((way) => way.surface === surface)?.tiles ?? []),
    }));
    return definePage({
      path,
      component: TilesPage,
      props: {
        frame: site.frame(path),
        title: capital(surface),
        sentence: `${count(tiles.length, "tile")} with a ${surface} surface, by cone.`,
        section: "wall",
        groups: byCone,
        empty: "No cone is known of them.",
      },
      search: null,
    });
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

/** Pages for a glaze mixer: blends, and the map of each cone. */
import { loudWords } from "../../../templates/mixing/hazards.tsx";
import { BlendPage, blendSentence } from "../../../templates/pages/blend-page.tsx";
import { MapPage, type MapTold, mapSentence } from "../../../templates/pages/map-page.tsx";
import { turnedUrl } from "../../catalogue/addresses.ts";
import type { CatalogueGlaze } from "../../catalogue/glazes.ts";
import type { Link } from "../../catalogue/link.ts";
import type { CatalogueBlend } from "../../catalogue/mixing/blends.ts";
import type { CatalogueMap } from "../../catalogue/mixing/maps.ts";
import { idKey } from "../../terms/ids.ts";
import { addTo } from "../../terms/index-by.ts";
import { definePage, type Page, type SearchEntry } from "../page.ts";
import { pagesOfLines } from "./line-lists.ts";
import type { Site } from "./site.ts";
import { cutGroups } from "./turning.ts";

export function blendPages(site: Site): readonly Page[] {
  const { blends } = site.catalogue;
  const lines = blends.map((blend) => ({
    name: blend.name,
    url: blend.url,
    told: [loudOfMembers(site, blend), blendSentence(blend)].filter(Boolean).join(". "),
  }));
  const list = pagesOfLines(site, {
    url: "blends/index.html",
    title: "Blends",
    many: "blends",
    sentence: "Blends of two or three glazes, side by side in steps.",
    section: "glazes",
    groups: [{ title: "", items: lines }],
    empty: "No blend is here yet. tilebook new --blend writes the records of one.",
  });
  return [...list, ...blends.map((blend) => blendPage(site, blend))];
}

function blendPage(site: Site, blend: CatalogueBlend): Page {
  const glazes = blend.members.flatMap(({ glaze }) => findGlaze(site, glaze.id) ?? []);
  const entry = (code: string | null) => (code === null ? null : (site.entries([code])[0] ?? null));
  return definePage({
    path: blend.url,
    component: BlendPage,
    props: () => ({
      frame: site.frame(blend.url),
      blend,
      glazes,
      tiles: blend.layouts.map(({ tiles }) => tiles.map(entry)),
    }),
    search: (props) => ({
      title: props.blend.name,
      kind: "Blend",
      words: blendSentence(props.blend),
      picture: null,
    }),
  });
}

function findGlaze(site: Site, id: string): CatalogueGlaze | undefined {
  return site.catalogue.glazeById.get(idKey(id));
}

/** What may never be left out beside a glaze's name. */
export function loudOf(site: Site, glaze: string): string | null {
  return loudWords(findGlaze(site, glaze)?.hazards ?? []);
}

function loudOfMembers(site: Site, { members }: CatalogueBlend): string | null {
  return members.map(({ glaze }) => loudOf(site, glaze.id)).find((words) => words !== null) ?? null;
}

export function mapPages(site: Site): readonly Page[] {
  const { maps } = site.catalogue;
  const lines = maps.map((map) => ({
    name: map.cone,
    url: map.url,
    told: mapSentence({ cone: map.cone, glazes: map.marks.length }),
    code: true,
  }));
  const list = pagesOfLines(site, {
    url: "maps/index.html",
    title: "Maps",
    many: "maps",
    sentence: "Glazes mixed here by silica to alumina and by their glass, one map for each cone.",
    section: "glazes",
    groups: [{ title: "", items: lines }],
    empty: "No glaze mixed from known materials has been fired alone yet.",
  });
  return [...list, ...maps.flatMap((map) => pagesOfMap(site, map))];
}

/** So many glazes in the part of a map's photographs and table that one page has. */
const rowsOfAMap = 40;

function pagesOfMap(site: Site, map: CatalogueMap): readonly Page[] {
  const marks = byRatio(map.marks).map((mark, i) => ({
    ...mark,
    number: i + 1,
    loud: loudOf(site, mark.glaze.id),
  }));
  return cutGroups(map.url, [{ title: "", items: marks }], rowsOfAMap).map(({ groups, turn }) => {
    const path = turnedUrl(map.url, turn.here);
    const isFirst = turn.here === 0;
    const rows = groups.flatMap(({ items }) => items);
    return definePage({
      path,
      component: MapPage,
      props: () => ({
        frame: site.frame(path, map.url),
        map: { cone: map.cone, glazes: marks.length },
        marks: isFirst ? marks : [],
        rows: rows.map((mark) => ({ ...mark, tile: tileOf(site, mark.shown) })),
        turn,
      }),
      search: isFirst ? (props) => searchMap(props.map) : null,
    });
  });
}

function tileOf(site: Site, shown: string | null) {
  return shown === null ? null : (site.entries([shown])[0] ?? null);
}

/** As the map has them from left to right; what has no ratio comes last. */
function byRatio(marks: CatalogueMap["marks"]): CatalogueMap["marks"] {
  const place = ({ ratio }: CatalogueMap["marks"][number]) => ratio ?? Number.POSITIVE_INFINITY;
  return [...marks].sort((a, b) =>
    place(a) === place(b) ? a.glass - b.glass : place(a) - place(b),
  );
}

function searchMap(map: MapTold): SearchEntry {
  const words = `silica alumina ${mapSentence(map)}`;
  return { title: `Map of cone ${map.cone}`, kind: "Map", words, picture: null };
}

/** The maps that each glaze stands on, as links, by its id. */
export function mapsByGlaze({ catalogue }: Site): ReadonlyMap<string, readonly Link[]> {
  const byGlaze = new Map<string, Link[]>();
  for (const { cone, url, marks } of catalogue.maps) {
    const link = { id: cone, name: `Map of cone ${cone}`, url };
    for (const { glaze } of marks) addTo(byGlaze, glaze.id, link);
  }
  return byGlaze;
}

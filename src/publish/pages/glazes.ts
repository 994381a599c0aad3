/** Pages of glazes, of pairs of them, and of what they are made of. */

import { loudWords } from "../../../templates/mixing/hazards.tsx";
import { GlazePage } from "../../../templates/pages/glaze-page.tsx";
import { ListPage } from "../../../templates/pages/list-page.tsx";
import { MaterialPage } from "../../../templates/pages/material-page.tsx";
import { MaterialsPage } from "../../../templates/pages/materials-page.tsx";
import { PairPage } from "../../../templates/pages/pair-page.tsx";
import { capital, count } from "../../../templates/words/english/numbers.ts";
import { coneRangeWords } from "../../../templates/words/firing/cones.ts";
import { glazeKind, glazeSentence } from "../../../templates/words/glaze/glaze.ts";
import type { CatalogueGlaze } from "../../catalogue/glazes.ts";
import type { Link } from "../../catalogue/link.ts";
import { companiesOf } from "../../catalogue/mixing/companies.ts";
import type { CatalogueMaterial } from "../../catalogue/mixing/materials.ts";
import type { CataloguePair } from "../../catalogue/pairs.ts";
import { kindsOfGlaze } from "../../terms/choices.ts";
import { idKey } from "../../terms/ids.ts";
import { definePage, type Page, type SearchEntry } from "../page.ts";
import { loudOf, mapsByGlaze } from "./mixing.ts";
import { wordsOfGlaze } from "./search-words.ts";
import type { Site } from "./site.ts";

export function glazePages(site: Site): readonly Page[] {
  const { glazes, pairs, materials } = site.catalogue;
  const maps = mapsByGlaze(site);
  return [
    listOfGlazes(site),
    ...glazes.map((glaze) => glazePage(site, glaze, maps.get(glaze.id) ?? [])),
    ...pairs.flatMap((pair) => pairPage(site, pair)),
    listOfMaterials(site),
    ...materials.map((material) => materialPage(site, material)),
  ];
}

function glazePage(site: Site, glaze: CatalogueGlaze, maps: readonly Link[]): Page {
  const alone = new Set(glaze.alone);
  return definePage({
    path: glaze.url,
    component: GlazePage,
    props: {
      frame: site.frame(glaze.url),
      glaze,
      alone: site.entries(glaze.alone),
      others: site.entries(glaze.tiles.filter((code) => !alone.has(code))),
      trust: site.catalogue.trust,
      maps,
      companies: companiesOf(glaze, site.catalogue.companies),
    },
    search: (props) => searchGlaze(props.glaze),
  });
}

function searchGlaze(glaze: CatalogueGlaze): SearchEntry {
  const words = `${glazeSentence(glaze)} ${wordsOfGlaze(glaze)}`;
  return { title: glaze.name, kind: capital(glazeKind(glaze.kind)), words, picture: null };
}

function listOfGlazes(site: Site): Page {
  const path = "glazes/index.html";
  const groups = kindsOfGlaze.map((kind) => ({
    title: capital(glazeKind(kind)),
    lines: site.catalogue.glazes
      .filter((glaze) => glaze.kind === kind)
      .map((glaze) => ({
        name: glaze.name,
        url: glaze.url,
        told: [
          loudWords(glaze.hazards),
          glaze.cones && coneRangeWords(glaze.cones),
          glaze.surface,
          count(glaze.tiles.length, "tile"),
        ]
          .filter(Boolean)
          .join(", "),
        colour: glaze.shownAs?.colour.hex ?? null,
      })),
  }));
  return definePage({
    path,
    component: ListPage,
    props: {
      frame: site.frame(path),
      title: "Glazes",
      sentence:
        "Everything that is put on clay here, bought or mixed, each with the colour it measured alone; hatched where that is not known.",
      section: "glazes",
      groups,
      empty: "No glazes yet. Add a record in recipes/glazes/ and it shows here.",
    },
    search: null,
  });
}

function pairPage(site: Site, pair: CataloguePair): Page[] {
  const over = site.catalogue.glazeById.get(idKey(pair.over.id));
  const under = site.catalogue.glazeById.get(idKey(pair.under.id));
  if (!over || !under) return [];
  const reverse = pair.reverse === null ? undefined : site.pairs.get(pair.reverse);
  const page = definePage({
    path: pair.url,
    component: PairPage,
    props: {
      frame: site.frame(pair.url),
      pair,
      tiles: site.entries(pair.tiles),
      reverse: site.entries(reverse?.tiles ?? []),
      glazes: { over, under },
    },
    search: (props) => searchPair(props.pair),
  });
  return [page];
}

function searchPair({ over: { name }, under }: CataloguePair): SearchEntry {
  const title = `${name} over ${under.name}`;
  return { title, kind: "Pair", words: title, picture: null };
}

function materialPage(site: Site, material: CatalogueMaterial): Page {
  const { url } = material;
  return definePage({
    path: url,
    component: MaterialPage,
    props: {
      frame: site.frame(url),
      material,
      glazes: material.glazes.map((glaze) => ({ ...glaze, loud: loudOf(site, glaze.id) })),
    },
    search: (props) => searchMaterial(props.material),
  });
}

function searchMaterial({ name, formula, notes }: CatalogueMaterial): SearchEntry {
  const words = [name, formula, notes].filter(Boolean).join(". ");
  return { title: name, kind: "Material", words, picture: null };
}

const basisWords = {
  analysis: null,
  formula: null,
  theoretical: "a pure mineral",
  typical: "a typical analysis",
} as const;

function listOfMaterials(site: Site): Page {
  const path = "materials/index.html";
  const { materials, carriedMaterials } = site.catalogue;
  const lines = materials.map(({ name, url, glazes, basis, hazards }) => ({
    name,
    url,
    told: [
      loudWords(hazards),
      `in ${count(glazes.length, "glaze")}`,
      basis === null ? "nobody knows what it is made of" : basisWords[basis],
    ]
      .filter(Boolean)
      .join(", "),
  }));
  return definePage({
    path,
    component: MaterialsPage,
    props: { frame: site.frame(path), lines, carried: carriedMaterials },
    search: null,
  });
}

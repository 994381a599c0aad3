/** Pages of raw materials. */
import { loudWords } from "../../../templates/mixing/hazards.tsx";
import { CarriedPage, isDust, materialsSentence } from "../../../templates/pages/carried-page.tsx";
import { ListPage } from "../../../templates/pages/list-page.tsx";
import { MaterialPage, materialSentence } from "../../../templates/pages/material-page.tsx";
import type { Frame } from "../../../templates/parts/frame.ts";
import type { Turn } from "../../../templates/parts/turn.ts";
import { count } from "../../../templates/words/english/numbers.ts";
import { turnedUrl } from "../../catalogue/addresses.ts";
import type { Link } from "../../catalogue/link.ts";
import type { CarriedLine, CatalogueMaterial } from "../../catalogue/mixing/materials.ts";
import { definePage, type Page, type SearchEntry } from "../page.ts";
import { pagesOfLines } from "./line-lists.ts";
import { loudOf } from "./mixing.ts";
import { recordFoot } from "./record-foot.ts";
import type { Site } from "./site.ts";
import { cutGroups, linesOnAPage } from "./turning.ts";

export function materialPages(site: Site): readonly Page[] {
  const { materials } = site.catalogue;
  return [
    ...listOfMaterials(site),
    ...materials.flatMap((material) => pagesOfMaterial(site, material)),
  ];
}

/** The first page tells of the material, the others go on with the glazes that hold it. */
function pagesOfMaterial(site: Site, material: CatalogueMaterial): readonly Page[] {
  const { name, url, formula, notes, glazes, ...told } = material;
  const sentence = materialSentence(material);
  const holding = glazes.map((glaze) => ({ ...glaze, loud: loudOf(site, glaze.id) }));
  const cuts = cutGroups(url, [{ title: "", items: holding }], linesOnAPage);
  return cuts.map(({ groups, turn }) => {
    const path = turnedUrl(url, turn.here);
    const frame = site.frame(path, url);
    const shown = groups.flatMap(({ items }) => items);
    if (turn.here > 0) return furtherGlazes({ frame, path, name, sentence, shown, turn });
    return definePage({
      path,
      component: MaterialPage,
      props: () => ({
        frame,
        material: { ...told, name, url, formula, notes },
        sentence,
        foot: recordFoot(site, url, name),
        glazes: shown,
        turn,
      }),
      search: (props) => searchMaterial(props.material),
    });
  });
}

function searchMaterial({ name, formula, notes }: MaterialFound): SearchEntry {
  const words = [name, formula, notes].filter(Boolean).join(". ");
  return { title: name, kind: "Material", words, picture: null };
}

type MaterialFound = Pick<CatalogueMaterial, "formula" | "name" | "notes">;

function furtherGlazes(page: {
  readonly frame: Frame;
  readonly path: string;
  readonly name: string;
  readonly sentence: string;
  readonly shown: readonly (Link & { readonly loud: string | null })[];
  readonly turn: Turn;
}): Page {
  const { frame, path, name, sentence, shown, turn } = page;
  const items = shown.map((glaze) => ({
    name: glaze.name,
    url: glaze.url,
    told: glaze.loud ?? "",
  }));
  return definePage({
    path,
    component: ListPage,
    props: () => ({
      frame,
      title: name,
      many: "glazes",
      sentence,
      section: "glazes" as const,
      groups: [{ title: "Glazes with it", items }],
      turn,
      empty: "",
    }),
    search: null,
  });
}

const basisWords = {
  analysis: null,
  formula: null,
  theoretical: "a pure mineral",
  typical: "a typical analysis",
} as const;

/** So many of the materials that need no record on a page, each with its analysis. */
const carriedOnAPage = 45;

/** The list of those that need no record; no id begins so. */
const carriedUrl = "materials/~carried.html";

function listOfMaterials(site: Site): readonly Page[] {
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
  const list = pagesOfLines(site, {
    url: "materials/index.html",
    title: "Materials",
    many: "materials",
    sentence: materialsSentence(lines.length),
    section: "glazes",
    groups: [{ title: "", items: lines }],
    empty: materialsSentence(0),
    seeAlso: {
      url: carriedUrl,
      words: `${count(carriedMaterials.length, "material")} that a recipe may name without a record`,
    },
  });
  return [...list, ...pagesOfCarried(site)];
}

function pagesOfCarried(site: Site): readonly Page[] {
  const { carriedMaterials } = site.catalogue;
  const roles = [...new Set(carriedMaterials.map(({ material }) => material.role))];
  const groups = roles.map((role) => ({
    title: role,
    items: carriedMaterials.filter(({ material }) => material.role === role),
  }));
  return cutGroups(carriedUrl, groups, carriedOnAPage).map((cut) => {
    const path = turnedUrl(carriedUrl, cut.turn.here);
    return definePage({
      path,
      component: CarriedPage,
      props: () => ({ frame: site.frame(path), ...cut, dust: dustOf(carriedMaterials) }),
      search: null,
    });
  });
}

/** The dust of silica is told once for all of them. */
function dustOf(carried: readonly CarriedLine[]): CarriedLine["hazards"] {
  return carried.flatMap(({ hazards }) => hazards.filter(isDust)).slice(0, 1);
}

/** Makes the files with what is set side by side. */
import { largestFile, smallFile } from "../../templates/parts/photograph.tsx";
import { tablesOfGlaze } from "../../templates/words/glaze/beside.ts";
import { stepsInWords, tablesOfTile } from "../../templates/words/tile/beside.ts";
import { stageName } from "../../templates/words/tile/outcome.ts";
import { namesTopFirst } from "../../templates/words/tile/stack.ts";
import type { CatalogueGlaze } from "../catalogue/glazes.ts";
import { firingsOf } from "../catalogue/kilns/tile-firings.ts";
import type { CatalogueTile } from "../catalogue/tiles.ts";
import { tilesByCode } from "../catalogue/tiles-by-code.ts";
import type { Catalogue } from "../catalogue/types.ts";
import { partsOf } from "../likeness/change.ts";
import { bucketOf, countBuckets } from "../terms/bucket.ts";
import { addTo } from "../terms/index-by.ts";
import type { BesideIndex, Subject, SubjectCurve, SubjectPicture } from "./beside-file.ts";
import type { DataFile } from "./data/entry.ts";
import { rounded } from "./data/numbers.ts";

/** So many tiles, or glazes, are in one file: some 50 KB. */
const inAFile = 24;

/** How many files there are, and how far like tiles differ. */
export function besideIndex({ trust, tiles, glazes }: Catalogue): BesideIndex {
  return {
    scatter: trust && rounded(trust.difference, 2),
    tiles: countBuckets(tiles.length, inAFile),
    glazes: countBuckets(glazes.length, inAFile),
  };
}

/** The files as classic scripts, which a page opened from a folder can load as well. */
export function makeBesideScripts(catalogue: Catalogue): readonly DataFile[] {
  const { tiles, glazes } = besideIndex(catalogue);
  return [
    ...inFiles("tiles", tiles, catalogue.tiles.map(tileSubject)),
    ...inFiles(
      "glazes",
      glazes,
      catalogue.glazes.map((glaze) => glazeSubject(glaze, catalogue)),
    ),
  ];
}

function inFiles(
  kind: "glazes" | "tiles",
  count: number,
  subjects: readonly Subject[],
): readonly DataFile[] {
  const files = new Map<number, Subject[]>();
  for (const subject of subjects) addTo(files, bucketOf(subject.id, count), subject);
  return [...files].map(([file, held]) => ({
    path: `data/beside/${kind}-${file + 1}.js`,
    content: `(self.tilebookBeside??={})["${kind} ${file}"]=${JSON.stringify(held)};\n`,
  }));
}

function tileSubject(tile: CatalogueTile): Subject {
  const { steps } = partsOf(tile.makeUp);
  const words = stepsInWords(tile, steps);
  return {
    id: tile.id,
    url: tile.url,
    name: namesTopFirst(tile),
    picture: pictureOf(tile),
    stage: stageName(tile.stage),
    steps: steps.map((facets, place) => ({
      words: words[place] ?? "",
      facets: facets.map(({ aspect, value }) => [aspect, value] as const),
    })),
    tables: tablesOfTile(tile),
    colour: colourOf(tile.colour),
    curves: firingsOf(tile.steps).flatMap(curveOf),
    glazes: Object.keys(tile.glazes),
  };
}

function pictureOf({ pictures }: CatalogueTile): SubjectPicture | null {
  const picture = pictures.find(({ role }) => role === "result");
  const [small, large] = picture ? [smallFile(picture), largestFile(picture)] : [];
  if (!picture || !small || !large) return null;
  return { small: small.url, large: large.url, alt: picture.alt ?? "" };
}

function colourOf(colour: CatalogueTile["colour"] | undefined): Subject["colour"] {
  if (!colour) return null;
  const [L, a, b] = colour.lab;
  return { hex: colour.hex, name: colour.name, lab: [rounded(L, 2), rounded(a, 2), rounded(b, 2)] };
}

function curveOf({ page, curve, kind }: ReturnType<typeof firingsOf>[number]): SubjectCurve[] {
  if (!page || !curve || kind === "bisque") return [];
  const points = curve.map(({ minutes, celsius, untimed }) => {
    const point = [Math.round(minutes), Math.round(celsius)] as const;
    return untimed ? ([...point, 1] as const) : point;
  });
  return [{ firing: page.id, url: page.url, points }];
}

/** A glaze shows the tile that speaks for its colour, else one of it alone. */
function glazeSubject(glaze: CatalogueGlaze, catalogue: Catalogue): Subject {
  const { shownAs, alone } = glaze;
  const codes = [...(shownAs ? [shownAs.tile.id] : []), ...alone];
  const tile = tilesByCode(catalogue, codes).find((each) => pictureOf(each) !== null);
  return {
    id: glaze.id,
    url: glaze.url,
    name: glaze.name,
    picture: tile ? pictureOf(tile) : null,
    stage: "no photograph of it alone",
    steps: [],
    tables: tablesOfGlaze(glaze),
    colour: colourOf(shownAs?.colour),
    curves: [],
    glazes: [],
  };
}

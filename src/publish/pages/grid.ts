/** The page of the grid, and the pairs as a list that goes on over further pages. */
import { GridPage, type PairLine } from "../../../templates/pages/grid-page.tsx";
import { coneHeading, gridChoices } from "../../../templates/words/site/grid.ts";
import { turnedUrl } from "../../catalogue/addresses.ts";
import type { CataloguePair } from "../../catalogue/pairs.ts";
import { idKey } from "../../terms/ids.ts";
import { indexBy } from "../../terms/index-by.ts";
import { gridPartPath, makeGrid } from "../grid.ts";
import type { GridIndex } from "../grid-file.ts";
import { definePage, type Page } from "../page.ts";
import type { Site } from "./site.ts";
import { cutGroups, type Group, linesOnAPage } from "./turning.ts";

const url = "grid.html";

export function gridPages(site: Site): readonly Page[] {
  const { index } = makeGrid(site.catalogue);
  const choices = choicesOf(index);
  const squares = gridPartPath(index.cones.keys[index.first] ?? "", 0);
  return cutGroups(url, pairsByCone(site, index), linesOnAPage).map(({ groups, turn }) => {
    const path = turnedUrl(url, turn.here);
    return definePage({
      path,
      component: GridPage,
      props: () => ({
        frame: site.frame(path, url),
        choices: turn.here === 0 && index.cones.keys.length > 0 ? choices : null,
        squares,
        groups,
        turn,
      }),
      search: null,
    });
  });
}

function choicesOf({ cones, clays, atmospheres }: GridIndex) {
  const fire = (label: string) => (label === "neutral" ? "a neutral fire" : label);
  return {
    cones: gridChoices(cones.labels, "not known yet"),
    clays: gridChoices(clays.labels, "a clay not written down"),
    atmospheres: gridChoices(atmospheres.labels, "a fire not written down", fire),
  };
}

/** In the order of the cones, and of the pairs' names. */
function pairsByCone({ catalogue }: Site, { cones }: GridIndex): readonly Group<PairLine>[] {
  const labelsOf = ({ tiles }: CataloguePair) =>
    tiles.map((code) => catalogue.tileById.get(idKey(code))?.cone ?? "");
  const byCone = indexBy(catalogue.pairs, labelsOf);
  return cones.labels
    .map((label) => ({
      title: coneHeading(label),
      items: (byCone.get(label) ?? []).map((pair) => ({
        name: `${pair.over.name} over ${pair.under.name}`,
        url: pair.url,
        tiles: labelsOf(pair).filter((each) => each === label).length,
      })),
    }))
    .filter(({ items }) => items.length > 0);
}

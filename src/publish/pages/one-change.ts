/** The tiles one change apart from a tile, as its page shows them. */
import { nameCodes } from "../../../templates/parts/codes.tsx";
import type { ChangeGroup, ChangePair } from "../../../templates/parts/one-change.tsx";
import {
  besidesSentence,
  changeSentence,
  colourDifferenceSentence,
  differenceHeading,
  resultSentence,
  tallySentence,
} from "../../../templates/words/tile/change.ts";
import { type Apart, apartFinder, besideEachOther, differences } from "../../catalogue/apart.ts";
import { groupBy } from "../../catalogue/group-by.ts";
import type { CatalogueTile } from "../../catalogue/tiles.ts";
import type { Site } from "./site.ts";

/** So many of each difference are shown with their photographs; and so many in all, one of each at least. */
const [mostOfOne, mostInAll] = [3, 9];

/** How many more are named by their codes. */
const mostNamed = 24;

/** By what differs, what teaches most first. */
export function oneChangeGroups(site: Site, tile: CatalogueTile): readonly ChangeGroup[] {
  const found = groupBy(apartFinder(site.catalogue)(tile), ({ difference }) => difference);
  const inOrder = found.toSorted(
    ([a], [b]) => differences.indexOf(a.difference) - differences.indexOf(b.difference),
  );
  let spare = mostInAll - inOrder.length;
  return inOrder.map((group) => {
    const telling = onePerChange(tile, group);
    const more = Math.max(0, Math.min(mostOfOne, telling.length, spare + 1) - 1);
    spare -= more;
    return groupOf(site, tile, group, telling.slice(0, 1 + more));
  });
}

/** Of those that differ in the very same, one; of replicates, which show how a result comes out, all. */
function onePerChange(tile: CatalogueTile, group: readonly Apart[]): readonly Apart[] {
  if (group[0]?.difference === "none") return group.slice(0, mostOfOne);
  const byWords = new Map<string, Apart>();
  for (const apart of group) {
    const words = changeSentence(tile, apart);
    if (!byWords.has(words)) byWords.set(words, apart);
    if (byWords.size === mostOfOne) break;
  }
  return [...byWords.values()];
}

function groupOf(
  site: Site,
  tile: CatalogueTile,
  group: readonly [Apart, ...Apart[]],
  shown: readonly Apart[],
): ChangeGroup {
  const { difference } = group[0];
  const others = group.filter((apart) => !shown.includes(apart));
  const isAlike = difference === "none";
  return {
    heading: differenceHeading(difference),
    tally: isAlike ? tallySentence([tile, ...group.map((apart) => apart.tile)]) : "",
    pairs: shown.map((apart) => pairOf(site, tile, apart)),
    others: nameCodes(
      others.map(({ tile: other }) => other),
      mostNamed,
    ),
  };
}

function pairOf(site: Site, tile: CatalogueTile, apart: Apart): ChangePair {
  const { id, url } = apart.tile;
  const beside = besideEachOther(tile, apart.tile);
  return {
    id,
    url,
    picture: apart.tile.pictures.find(({ role }) => role === "result") ?? null,
    stage: apart.tile.stage,
    words: changeSentence(tile, apart),
    result: resultSentence(apart.tile),
    colour: colourDifferenceSentence(beside.deltaE00, site.catalogue.trust),
    besides: besidesSentence(beside),
  };
}

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
  twoChangesCaution,
  twoChangesSentence,
} from "../../../templates/words/tile/change.ts";
import {
  type Apart,
  apartFinder,
  besideEachOther,
  differences,
  type TwoApart,
  twoApartOf,
} from "../../catalogue/apart.ts";
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
    pairs: shown.map((apart) => pairOf(site, tile, apart.tile, changeSentence(tile, apart))),
    others: nameCodes(
      others.map(({ tile: other }) => other),
      mostNamed,
    ),
  };
}

/** Fewer tiles one change apart than this are few: those two changes apart are shown as well. */
const few = 3;

/** A tile may have very many of them, and what they show is weaker: so many shown, so many named. */
const [mostOfTwo, mostOfTwoNamed] = [2, 12];

/** The tiles two changes apart, where few are one apart; null where there are none. */
export function twoChanges(site: Site, tile: CatalogueTile): ChangeGroup | null {
  const oneApart = apartFinder(site.catalogue)(tile).filter(
    ({ difference }) => difference !== "none",
  );
  if (oneApart.length >= few) return null;
  const found = twoApartOf(site.catalogue)(tile).toSorted(
    (a, b) => rankOf(a.differences) - rankOf(b.differences),
  );
  if (found.length === 0) return null;
  const byWords = groupBy(found, (apart) => twoChangesSentence(tile, apart));
  const shown = byWords.slice(0, mostOfTwo).map(([first]) => first);
  const others = found.filter((apart) => !shown.includes(apart)).map(({ tile: other }) => other);
  return {
    heading: "Two changes apart",
    tally: twoChangesCaution,
    pairs: shown.map((apart) => pairOf(site, tile, apart.tile, twoChangesSentence(tile, apart))),
    others: nameCodes(others, mostOfTwoNamed),
  };
}

/** What was done before the kiln and the clay, and another glaze last. */
function rankOf([one, other]: TwoApart["differences"]): number {
  return differences.indexOf(one) + differences.indexOf(other);
}

function pairOf(site: Site, tile: CatalogueTile, other: CatalogueTile, words: string): ChangePair {
  const { id, url, stage } = other;
  const beside = besideEachOther(tile, other);
  return {
    id,
    url,
    picture: other.pictures.find(({ role }) => role === "result") ?? null,
    stage,
    words,
    result: resultSentence(other),
    colour: colourDifferenceSentence(beside.deltaE00, site.catalogue.trust),
    besides: besidesSentence(beside),
  };
}

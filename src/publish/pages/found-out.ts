/** What a set found out: the first of it for its own page, and all of it on a page of its own. */
import { FoundPage } from "../../../templates/pages/found-page.tsx";
import { nameCodes } from "../../../templates/parts/codes.tsx";
import type { LearnedLine, LessonList } from "../../../templates/parts/found-out.tsx";
import { firstWords } from "../../../templates/parts/markdown.ts";
import { cameOut, howItWentOn } from "../../../templates/words/tile/account.ts";
import {
  firedOn,
  foundOutOf,
  foundOutSentence,
  lessonHeadings,
  nextTimeWords,
  restsOn,
} from "../../../templates/words/tile/found-out.ts";
import { foundUrl, turnedUrl } from "../../catalogue/addresses.ts";
import { type FoundOut, foundOutBy, type Learned, lessons } from "../../catalogue/found-out.ts";
import type { CatalogueSet } from "../../catalogue/sets.ts";
import type { CatalogueTile } from "../../catalogue/tiles.ts";
import { tilesByCode } from "../../catalogue/tiles-by-code.ts";
import { definePage, type Page } from "../page.ts";
import type { Site } from "./site.ts";
import { cutGroups } from "./turning.ts";

/** So much of each on the set's own page, so many lines on a page of all, and letters of one note. */
const [linesOnTheSet, linesOnAPage, mostLetters] = [3, 40, 280];

/** Of tiles made alike so many are named, and so many are quoted. */
const [mostNamed, mostQuoted] = [6, 3];

export interface FoundBySet {
  readonly sentence: string;
  readonly lessons: readonly LessonList[];
  /** The page that has all of it; null where this is all. */
  readonly all: { readonly url: string; readonly lines: number } | null;
}

/** What a set's own page shows of what it found out; null where nobody has said anything yet. */
export function foundBySet(site: Site, set: CatalogueSet): FoundBySet | null {
  const found = foundOutBy(tilesByCode(site.catalogue, set.tiles));
  const all = listsOf(site, found);
  if (all.length === 0) return null;
  return {
    sentence: foundOutSentence(found, set.tiles.length),
    lessons: all.map(({ title, items }) => ({ title, items: items.slice(0, linesOnTheSet) })),
    all: hasMore(all) ? { url: foundUrl(set.id), lines: countLines(all) } : null,
  };
}

export function foundPages(site: Site): readonly Page[] {
  return site.catalogue.sets.flatMap((set) => pagesOfSet(site, set));
}

function pagesOfSet(site: Site, set: CatalogueSet): readonly Page[] {
  const found = foundOutBy(tilesByCode(site.catalogue, set.tiles));
  const all = listsOf(site, found);
  if (!hasMore(all)) return [];
  const url = foundUrl(set.id);
  return cutGroups(url, all, linesOnAPage).map(({ groups, turn }) => {
    const path = turnedUrl(url, turn.here);
    return definePage({
      path,
      component: FoundPage,
      props: () => ({
        frame: site.frame(path, url),
        title: foundOutOf(set.name),
        sentence: foundOutSentence(found, set.tiles.length),
        set: { name: set.name, url: set.url },
        lessons: groups,
        turn,
      }),
      search: null,
    });
  });
}

const hasMore = (all: readonly LessonList[]) =>
  all.some(({ items }) => items.length > linesOnTheSet);

const countLines = (all: readonly LessonList[]) =>
  all.reduce((sum, { items }) => sum + items.length, 0);

/** Families are not shown what went wrong by itself. */
function listsOf(site: Site, found: FoundOut): readonly LessonList[] {
  const { alone } = site.catalogue.studio;
  return lessons
    .filter((lesson) => lesson !== "avoid" || alone?.forFamilies !== true)
    .map((lesson) => ({
      title: lessonHeadings[lesson],
      items: found[lesson].map((learned) => lineOf(site, learned)),
    }))
    .filter(({ items }) => items.length > 0);
}

function lineOf(site: Site, learned: Learned): LearnedLine {
  const [tile] = learned.tiles;
  if (!tile) throw new Error("Something was learned from no tile");
  return {
    codes: nameCodes(learned.tiles, mostNamed),
    names: site.names(tile) || "A tile without glaze",
    told: [howItWentOn(tile), firedOn(tile), cameOut(tile)],
    said: learned.tiles.flatMap(saidOf).slice(0, mostQuoted),
    rests: restsOn(learned),
  };
}

/** The beginning of the notes, and what to do otherwise next time. */
function saidOf({ notes, results, maker }: CatalogueTile): LearnedLine["said"] {
  const next = results.at(-1)?.nextTime;
  const words = [firstWords(notes, mostLetters), next ? nextTimeWords(next) : ""];
  const told = words.filter((each) => each.trim() !== "");
  return told.map((each) => ({ words: each, by: maker?.name ?? null }));
}

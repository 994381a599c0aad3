/** The page of what runs, and how it goes on. */

import {
  type RunnerView,
  RunsPage,
  type RunsPageProps,
  type TestWay,
} from "../../../templates/pages/runs-page.tsx";
import { nameCodes } from "../../../templates/parts/codes.tsx";
import { count } from "../../../templates/words/english/numbers.ts";
import {
  aboutTests,
  farthestWords,
  layersName,
  recordAgainstTile,
  tallyOfRun,
  testTitle,
  wallAdvice,
} from "../../../templates/words/glaze/runs.ts";
import { circumstanceHeading, firedWords } from "../../../templates/words/tile/circumstance.ts";
import { runsUrl, turnedUrl } from "../../catalogue/addresses.ts";
import { groupBy } from "../../catalogue/group-by.ts";
import type { Link } from "../../catalogue/link.ts";
import { listRunners, type Runner } from "../../catalogue/runners.ts";
import type { Catalogue } from "../../catalogue/types.ts";
import { idSlug } from "../../terms/ids.ts";
import { definePage, type Page } from "../page.ts";
import type { Site } from "./site.ts";
import { testedTile } from "./tested-tile.ts";
import { type Cut, cutGroups } from "./turning.ts";

/** How many entries a page has, and how many tiles of each are named by their codes. */
const [entriesOnAPage, mostNamed] = [30, 8];

/** So many glazes that are only said to run are named. */
const mostSaid = 60;

export function runsPages(site: Site): readonly Page[] {
  const runners = listRunners(site.catalogue);
  const groups = groupBy(runners, ({ circumstance }) => testTitle(circumstance)).map((items) => ({
    title: testTitle(items[0].circumstance),
    items,
  }));
  const cuts = cutGroups<Runner>(runsUrl, groups, entriesOnAPage);
  const tests = waysToTests(cuts);
  const saidToRun = saidAlone(site.catalogue, runners);
  return cuts.map(({ groups: shown, turn }) => {
    const path = turnedUrl(turn.url, turn.here);
    return definePage({
      path,
      component: RunsPage,
      props: () => ({
        frame: site.frame(path, turn.url),
        sentence: sentenceOf(runners),
        tests,
        groups: shown.flatMap(({ items }) => viewGroup(site, items)),
        turn,
        saidToRun: saidToRun.slice(0, mostSaid),
      }),
      search:
        turn.here === 0
          ? ({ sentence }) => ({
              title: "What runs",
              kind: "List",
              words: `${sentence} ${searchWords}`,
              picture: null,
            })
          : null,
    });
  });
}

const searchWords = "runs runny movers dripped stuck bare foot catch tray";

function sentenceOf(runners: readonly Runner[]): string {
  const tiles = runners.reduce((sum, { ran }) => sum + ran.length, 0);
  return `${count(tiles, "tile")} on which a glaze ran 5\u00a0mm or more, or was said to run: by shape of test and by cone, the longest run first.`;
}

/** Where each shape of test and cone begins. */
function waysToTests(cuts: readonly Cut<Runner>[]): readonly TestWay[] {
  const ways = new Map<string, TestWay>();
  for (const { groups, turn } of cuts)
    for (const { title } of groups)
      if (!ways.has(title))
        ways.set(title, { title, url: `${turnedUrl(turn.url, turn.here)}#${idOf(title)}` });
  return [...ways.values()];
}

function idOf(title: string): string {
  return idSlug(title.replace(/[^\p{L}\p{N}]+/gu, "-"));
}

function viewGroup(site: Site, items: readonly Runner[]): RunsPageProps["groups"] {
  const [first] = items;
  if (!first) return [];
  const { circumstance } = first;
  const title = testTitle(circumstance);
  const { words } = aboutTests[circumstance.shape];
  return [{ id: idOf(title), title, words, items: items.map((it) => viewRunner(site, it)) }];
}

function viewRunner(site: Site, runner: Runner): RunnerView {
  const { page, circumstance, farthest, moves, ran, held } = runner;
  const [first, ...others] = ran;
  return {
    name: layersName(runner.layers),
    url: page,
    ran: farthestWords(runner),
    length: farthest,
    circumstance: circumstanceHeading(circumstance),
    fired: firedWords(circumstance),
    tally: tallyOfRun(runner),
    advice: wallAdvice(runner),
    record: recordAgainstTile(moves),
    tile: (first && testedTile(site, first)) ?? null,
    others: nameCodes(others, mostNamed),
    held: nameCodes(held, mostNamed),
  };
}

/** Glazes whose records say that they run, and that did so on no tile by themselves. */
function saidAlone({ glazes }: Catalogue, runners: readonly Runner[]): readonly Link[] {
  const seen = new Set(runners.map(({ page }) => page));
  return glazes
    .filter(({ moves, url }) => moves === "runs" && !seen.has(url))
    .map(({ id, name, url }) => ({ id, name, url }));
}

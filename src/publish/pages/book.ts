/** The book of a set: a cover with its introduction, contents, and a sheet for each of its tiles. */

import { keySentences } from "../../../templates/drawing/drawing-key.tsx";
import type { Block, Leaf, LeafHead } from "../../../templates/pages/book-leaf.ts";
import { BookPage } from "../../../templates/pages/book-page.tsx";
import { setSentence } from "../../../templates/pages/set-page.tsx";
import { capital, formatDay } from "../../../templates/words/english/numbers.ts";
import { pageTitle } from "../../../templates/words/english/turning.ts";
import { besideTile } from "../../../templates/words/firing/story.ts";
import {
  aboutBook,
  bookCare,
  bookFacts,
  bookTitle,
  contentsTitle,
} from "../../../templates/words/site/book.ts";
import {
  againSentence,
  fateSentence,
  firingSentence,
  lookWords,
  stageName,
  tileSentence,
} from "../../../templates/words/tile/outcome.ts";
import { stepWords } from "../../../templates/words/tile/steps.ts";
import { bookUrl, turnedUrl } from "../../catalogue/addresses.ts";
import { firingsOf } from "../../catalogue/kilns/tile-firings.ts";
import { pickEvenly } from "../../catalogue/pick-evenly.ts";
import type { CatalogueSet } from "../../catalogue/sets.ts";
import type { CatalogueTile } from "../../catalogue/tiles.ts";
import { tilesByCode } from "../../catalogue/tiles-by-code.ts";
import type { TileStep } from "../../records/archive.ts";
import { definePage, type Page } from "../page.ts";
import {
  cutIntoParts,
  layOnLeaves,
  paragraphsOf,
  stepsFitBeside,
  type UnnumberedLeaf,
} from "./book-leaves.ts";
import type { Site } from "./site.ts";

export function bookPages(site: Site): readonly Page[] {
  return site.catalogue.sets
    .filter(({ tiles }) => tiles.length > 0)
    .flatMap((set) => bookOfSet(site, set));
}

function bookOfSet(site: Site, set: CatalogueSet): readonly Page[] {
  const url = bookUrl(set.id);
  const leaves = leavesOf(site, set);
  const parts = cutIntoParts(leaves);
  let before = 0;
  return withAddresses(parts, url).map((part, here) => {
    const path = turnedUrl(url, here);
    const turn = {
      ...{ url, here, pages: parts.length, before },
      ...{ shown: part.length, total: leaves.length },
    };
    before += part.length;
    return definePage({
      path,
      component: BookPage,
      props: () => ({
        frame: site.frame(path, url),
        title: pageTitle(bookTitle(set.name), here, parts.length),
        sentence: aboutBook,
        set: { name: set.name, url: set.url },
        leaves: part,
        turn,
      }),
      search: null,
    });
  });
}

/** Where each leaf is can be told only when all are laid. */
function withAddresses(
  parts: readonly (readonly Leaf[])[],
  url: string,
): readonly (readonly Leaf[])[] {
  const partOf = new Map(
    parts.flatMap((part, here) => part.map(({ number }) => [number, here] as const)),
  );
  const placed = (block: Block): Block => {
    if (block.what !== "line") return block;
    const { page } = block.line;
    const address = `${turnedUrl(url, partOf.get(page) ?? 0)}#p-${page}`;
    return { ...block, line: { ...block.line, url: address } };
  };
  return parts.map((part) => part.map((leaf) => ({ ...leaf, blocks: leaf.blocks.map(placed) })));
}

/** All leaves of a book with their numbers, which its contents are made of. */
export function leavesOf(site: Site, set: CatalogueSet): readonly Leaf[] {
  const cover = coverLeaves(site, set);
  const tiles = tilesByCode(site.catalogue, set.tiles).map((tile) => ({
    tile,
    leaves: tileLeaves(site, tile),
  }));
  const contents = (from: number) => {
    let page = from;
    const lines = tiles.map(({ tile, leaves }): Block => {
      const line = { code: tile.id, names: titleOf(site, tile), page, url: "" };
      page += leaves.length;
      return { what: "line", line };
    });
    return layOnLeaves({ what: "title", title: contentsTitle }, contentsTitle, lines);
  };
  const before = cover.length + contents(1).length;
  const all = [...cover, ...contents(before + 1), ...tiles.flatMap(({ leaves }) => leaves)];
  return all.map((leaf, i) => ({ ...leaf, number: i + 1 }));
}

/** So many of its tiles are on the cover. */
const tilesOnTheCover = 6;

function coverLeaves(site: Site, set: CatalogueSet): readonly UnnumberedLeaf[] {
  const entries = site.entries(set.tiles).filter(({ picture }) => picture !== null);
  const by = set.teacher?.name ?? null;
  const blocks: readonly Block[] = [
    { what: "fact", name: "", words: setSentence(set) },
    ...paragraphsOf(set.notes).map((words): Block => ({ what: "said", words, by })),
    { what: "fact", name: "", words: bookCare },
  ];
  const tiles = pickEvenly(entries, tilesOnTheCover);
  return layOnLeaves({ what: "cover", title: set.name, tiles }, set.name, blocks);
}

function titleOf(site: Site, tile: CatalogueTile): string {
  return site.names(tile) || "A tile without glaze";
}

function tileLeaves(site: Site, tile: CatalogueTile): readonly UnnumberedLeaf[] {
  const view = site.view(tile);
  const steps = stepsOf(tile);
  const beside = stepsFitBeside(steps);
  const head: LeafHead = {
    what: "tile",
    code: tile.id,
    url: tile.url,
    names: titleOf(site, tile),
    sentence: tileSentence(tile),
    picture: tile.pictures.find(({ role }) => role === "result") ?? tile.pictures[0] ?? null,
    view,
    key: keySentences(view).join(" "),
    steps: beside ? steps : [],
  };
  return layOnLeaves(head, tile.id, [
    ...(beside ? [] : steps.map((words, i): Block => ({ what: "step", nth: i + 1, words }))),
    ...kilnBlocks(tile),
    ...outcomeBlocks(tile),
    ...paragraphsOf(tile.notes).map(
      (words): Block => ({ what: "said", words, by: tile.maker?.name ?? null }),
    ),
    ...tile.cautions.map((note): Block => ({ what: "caution", note })),
  ]);
}

const fact = (name: string, words: string): Block => ({ what: "fact", name, words });

function stepsOf({ steps, glazes }: CatalogueTile): readonly string[] {
  return steps.map((step) => stepWords(withoutId(step), (id) => glazes[id]?.name ?? id));
}

function kilnBlocks(tile: CatalogueTile): readonly Block[] {
  const told = firingsOf(tile.steps).map((firing) =>
    [`${firingSentence(firing)}.`, firing.kind === "bisque" ? "" : besideTile(firing)]
      .filter(Boolean)
      .join(" "),
  );
  const words = told.length > 0 ? told : ["It has not been fired yet."];
  return words.map((each, i) => fact(i === 0 ? bookFacts.kiln : "", each));
}

function outcomeBlocks({ results, later, fate, stage }: CatalogueTile): readonly Block[] {
  const told = [
    ...(fate ? [fateSentence(fate)] : []),
    ...results.map((result) =>
      [sentence(lookWords(result)), result.again && againSentence(result.again)]
        .filter(Boolean)
        .join(" "),
    ),
    ...later.map(
      (look) => `Looked at again on ${formatDay(look.on)}: ${lookWords(look) || "nothing new"}.`,
    ),
  ];
  const words = told.length > 0 ? told : [`${capital(stageName(stage))}.`];
  return [
    ...words.map((each, i) => fact(i === 0 ? bookFacts.outcome : "", each)),
    ...results.flatMap(({ nextTime }) => (nextTime ? fact(bookFacts.nextTime, nextTime) : [])),
  ];
}

function sentence(words: string): string {
  return words && `${capital(words)}.`;
}

/** On a sheet of paper the id of a firing leads nowhere. */
function withoutId(step: TileStep): TileStep {
  return step.step === "fired" ? { ...step, firing: null } : step;
}

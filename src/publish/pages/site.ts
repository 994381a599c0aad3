/** What all pages of one site share: made once, handed to whoever lists a kind of page. */

import type { LayerView } from "../../../templates/drawing/layer-view.ts";
import { layerView, type Paint } from "../../../templates/drawing/layer-view.ts";
import type { TileEntry } from "../../../templates/parts/entry.ts";
import type { Frame } from "../../../templates/parts/frame.ts";
import { type LeadPicture, leadPictureOf } from "../../../templates/parts/lead-picture.ts";
import { toSmallPicture } from "../../../templates/parts/photograph.tsx";
import { aloneSentence } from "../../../templates/words/site/alone.ts";
import type { WaitingRecord } from "../../../templates/words/site/waiting.ts";
import type { CardOutcomeFacts } from "../../../templates/words/tile/card.ts";
import { namesTopFirst } from "../../../templates/words/tile/stack.ts";
import { withSlash } from "../../catalogue/addresses.ts";
import { paintFinder } from "../../catalogue/colours/glaze-paint.ts";
import type { CatalogueFiring } from "../../catalogue/kilns/firings.ts";
import type { CataloguePair } from "../../catalogue/pairs.ts";
import type { CatalogueTile } from "../../catalogue/tiles.ts";
import { tilesByCode } from "../../catalogue/tiles-by-code.ts";
import type { Catalogue } from "../../catalogue/types.ts";
import { findRestart } from "../../records/coat-stack.ts";
import { idKey } from "../../terms/ids.ts";
import { readLicence } from "../../terms/licences.ts";
import { feedPath } from "../feed.ts";

export interface Site {
  readonly catalogue: Catalogue;
  /** Records that were left out until they are mended. */
  readonly waiting: readonly WaitingRecord[];
  /** The frame of the page at a path; of a list's further pages, with the address of its first. */
  readonly frame: (path: string, first?: string) => Frame;
  readonly view: (tile: CatalogueTile) => LayerView;
  readonly names: (tile: CatalogueTile) => string;
  /** Tiles by their codes, in the order given. */
  readonly entries: (codes: readonly string[]) => readonly TileEntry[];
  /** By the address of their pages. */
  readonly pairs: ReadonlyMap<string, CataloguePair>;
  /** By their ids. */
  readonly firings: ReadonlyMap<string, CatalogueFiring>;
  /** The photograph that a page leads with which shows these tiles in this order; null where none has one. */
  readonly lead: (codes: readonly string[]) => LeadPicture | null;
  /** Tiles made and fired alike, this one among them; none where it is the only one. */
  readonly replicates: (tile: CatalogueTile) => readonly CatalogueTile[];
}

/** Where a site is among others, and what was left out of it. */
export interface SitePlace {
  /** Beneath the root of the whole: empty, or `s/<token>`. */
  readonly under: string;
  readonly waiting: readonly WaitingRecord[];
}

export function makeSite(catalogue: Catalogue, place: SitePlace): Site {
  const view = onceForEach(viewFinder(catalogue));
  // Frozen, so that the key of every page it is on takes its sum, which is made once.
  const entry = (tile: CatalogueTile): TileEntry => {
    const picture = tile.pictures.find(({ role }) => role === "result");
    return Object.freeze({
      id: tile.id,
      url: tile.url,
      names: namesTopFirst(tile),
      picture: picture ? toSmallPicture(picture) : null,
      view: view(tile),
      stage: tile.stage,
      outcome: outcomeOf(tile),
    });
  };
  const byId = new Map(catalogue.tiles.map((tile) => [idKey(tile.id), entry(tile)]));
  return {
    catalogue,
    waiting: place.waiting,
    frame: frameFinder(catalogue, place),
    view,
    names: namesTopFirst,
    entries: (codes) => codes.flatMap((code) => byId.get(idKey(code)) ?? []),
    lead: leadFinder(catalogue),
    pairs: new Map(catalogue.pairs.map((pair) => [pair.url, pair])),
    firings: new Map(catalogue.firings.map((firing) => [firing.id, firing])),
    replicates: replicateFinder(catalogue),
  };
}

/** What a card says of a tile. */
export function outcomeOf(tile: CatalogueTile): CardOutcomeFacts {
  const { surface, faults, again, fate, run } = tile;
  return { surface, faults, again, fate, run };
}

/** What a tile's card and its page both show is made once, and frozen for the sum of it. */
function onceForEach(view: Site["view"]): Site["view"] {
  const made = new Map<CatalogueTile, LayerView>();
  return (tile) => {
    const known = made.get(tile) ?? Object.freeze(view(tile));
    made.set(tile, known);
    return known;
  };
}

/** Each glaze in the colour that it measured alone on such a clay in such a fire. */
function viewFinder(catalogue: Catalogue): Site["view"] {
  const clays = new Map(catalogue.clays.map((clay) => [clay.id, clay.colour ?? clay.name]));
  const findPaint = paintFinder(catalogue);
  const paintOf = (id: string, tile: CatalogueTile): Paint => {
    const { name = id, kind = "glaze" } = catalogue.glazeById.get(idKey(id)) ?? {};
    const paint = findPaint(id, tile);
    if (!paint) return { name, kind, colour: null, measured: null };
    const measured = { clay: paint.clay?.name ?? null, cone: paint.cone };
    return { name, kind, colour: paint.colour.hex, measured };
  };
  return (tile) =>
    layerView({
      texture: tile.texture,
      clay: tile.clay && (clays.get(tile.clay.id) ?? null),
      steps: tile.steps,
      restart: findRestart(tile.steps),
      paintOf: (id) => paintOf(id, tile),
    });
}

function leadFinder(catalogue: Catalogue): Site["lead"] {
  return (codes) => {
    for (const code of codes) {
      const tile = catalogue.tileById.get(idKey(code));
      const picture = tile && leadPictureOf(tile);
      if (picture) return picture;
    }
    return null;
  };
}

function replicateFinder(catalogue: Catalogue): Site["replicates"] {
  const groups = new Map(
    catalogue.replicates.flatMap((codes) => codes.map((code) => [code, codes] as const)),
  );
  return ({ id }) => tilesByCode(catalogue, groups.get(id) ?? []);
}

function frameFinder({ studio, own }: Catalogue, { under, waiting }: SitePlace): Site["frame"] {
  const missing = countBy(waiting.flatMap(({ pages }) => pages));
  const records = waiting.length;
  const alone = studio.alone && aloneSentence(studio.alone);
  // Of an unlisted set the pages, and so the codes on its labels, lead to its own site and nowhere else.
  const address = studio.address && withSlash(studio.address) + (under && withSlash(under));
  const links = Object.freeze(own.pages.map(({ title, url }) => Object.freeze({ title, url })));
  const licence = studio.licence === null ? null : describeLicence(studio.licence);
  return (path, first = path) => ({
    root:
      path === notFoundPath
        ? rootPath(studio.address, under)
        : "../".repeat(path.split("/").length - 1),
    path,
    site: address && new URL(address).href,
    studio: studio.name,
    mark: own.mark,
    website: own.website,
    pages: links,
    licence,
    canonical: address && new URL(path, address).href,
    feed: studio.address === null || studio.unlisted ? null : feedPath,
    unlisted: studio.unlisted,
    form: studio.alone?.forFamilies ? null : formPath,
    alone,
    waiting: records === 0 ? null : { records, here: missing.get(first) ?? 0 },
  });
}

/** Frozen, since every page has it. */
function describeLicence(words: string): Frame["licence"] {
  const known = readLicence(words);
  return Object.freeze({ words, known: known ? Object.freeze({ ...known }) : null });
}

/** The form on which a tile is written down. */
export const formPath = "add.html";

/** The page that a host shows for an address that leads nowhere, at whatever depth that is. */
export const notFoundPath = "404.html";

/** The path of a site's root on its host; the host's own root where nobody says. */
function rootPath(address: string | null, under: string): string {
  const root = address === null ? "/" : withSlash(new URL(address).pathname);
  return under === "" ? root : `${root}${withSlash(under)}`;
}

function countBy(words: readonly string[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const word of words) counts.set(word, (counts.get(word) ?? 0) + 1);
  return counts;
}

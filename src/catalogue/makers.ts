/** Makers' names, no further than `shown` in studio.yaml allows. */

import type { Tile } from "../records/archive.ts";
import type { MakerRecord, StudioRecord } from "../records/studio.ts";
import { compareIds } from "../terms/ids.ts";
import { indexBy } from "../terms/index-by.ts";
import { makerUrl, nameSlugs } from "./addresses.ts";

/** A maker's name or initials, and the page of those who let their name be shown. */
export interface MakerName {
  readonly name: string;
  readonly url: string | null;
}

/** A maker who lets the whole name be shown. */
export interface CatalogueMaker {
  readonly name: string;
  readonly url: string;
  readonly tiles: readonly string[];
}

/**
 * The names that may be shown, by the makers' keys. A maker without a name, or with `shown: no`
 * or nothing said, is left out. Initials lead to no page, which would gather what the maker did.
 */
export function namesThatMayBeShown(studio: StudioRecord): ReadonlyMap<string, MakerName> {
  const names = new Map<string, MakerName>();
  const slugFor = nameSlugs("maker");
  for (const [key, maker] of Object.entries(studio.makers ?? {})) {
    const name = shownName(maker);
    if (name === undefined) continue;
    names.set(key, { name, url: maker.shown === "yes" ? makerUrl(slugFor(name)) : null });
  }
  return names;
}

/** What a maker may be called; undefined where nothing may be said. */
export function shownName(maker: MakerRecord): string | undefined {
  if (maker.shown === "yes") return maker.name;
  if (maker.shown === "initials" && maker.name) return initialsOf(maker.name);
  return undefined;
}

/** `Rowan K.` → `R. K.` */
export function initialsOf(name: string): string {
  return name
    .split(/\s+/u)
    .map((word) => Array.from(word)[0])
    .filter((letter) => letter !== undefined)
    .map((letter) => `${letter.toUpperCase()}.`)
    .join(" ");
}

/** The makers who have a page, in the order of their names, with the tiles they made. */
export function listMakers(
  names: ReadonlyMap<string, MakerName>,
  tiles: readonly Tile[],
): readonly CatalogueMaker[] {
  const byMaker = indexBy(tiles, ({ maker }) => (maker === null ? [] : [maker]));
  const tilesOf = (key: string) => (byMaker.get(key) ?? []).map(({ id }) => id);
  return [...names]
    .flatMap(([key, { name, url }]) => (url === null ? [] : [{ name, url, tiles: tilesOf(key) }]))
    .filter((maker) => maker.tiles.length > 0)
    .sort((a, b) => compareIds(a.name, b.name));
}

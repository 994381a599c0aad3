/** Cuts long lists into pages, so that no page grows with the archive. */
import type { Turn } from "../../../templates/parts/turn.ts";

/** Part of a list under a heading of its own; the heading is empty where there is none. */
export interface Group<T> {
  readonly title: string;
  readonly items: readonly T[];
}

/** What stands on one of the pages of a list. */
export interface Cut<T> {
  readonly groups: readonly Group<T>[];
  readonly turn: Turn;
}

/** How many tiles a page of a list shows: a few screens of a phone, and rows enough on a desk. */
export const tilesOnAPage = 48;

/** How many lines a page of a list has: glazes, sets, makers, materials. */
export const linesOnAPage = 100;

/** How many firings a page of a list shows, each with its curve. */
export const firingsOnAPage = 48;

/**
 * Cuts groups into pages in their order. A group that does not end on a page goes on on the next.
 *
 * @param url the address of the first page
 * @param first how many the first page shows; the others show `later`
 * @returns one page at least, the first of them empty where there is nothing to list
 */
export function cutGroups<T>(
  url: string,
  groups: readonly Group<T>[],
  later: number,
  first = later,
): readonly Cut<T>[] {
  const left = lengthOf(groups) - first;
  const most = left <= tooFew ? first + tooFew : first;
  return numberPages(url, [takeFrom(groups, 0, most), ...cutEvenly(groups, most, later)]);
}

/** So few entries have no page of their own: they stand on the one before. */
const tooFew = 6;

/** Cuts groups so that the first page shows the beginning of each of them, and the others the rest. */
export function cutEach<T>(
  url: string,
  groups: readonly Group<T>[],
  later: number,
  first: number,
): readonly Cut<T>[] {
  const left = groups.reduce((sum, { items }) => sum + Math.max(0, items.length - first), 0);
  const most = left <= tooFew ? first + left : first;
  const begun = groups.map(({ title, items }) => ({ title, items: items.slice(0, most) }));
  const rest = groups.map(({ title, items }) => ({ title, items: items.slice(most) }));
  return numberPages(url, [begun, ...cutEvenly(rest, 0, later)]);
}

function cutEvenly<T>(groups: readonly Group<T>[], from: number, size: number) {
  const left = lengthOf(groups) - from;
  const pages = Math.max(0, Math.ceil((left - tooFew) / size), left > 0 ? 1 : 0);
  return Array.from({ length: pages }, (_, i) =>
    takeFrom(groups, from + i * size, i === pages - 1 ? size + tooFew : size),
  );
}

/** So many of all groups from a place on, each under its own heading. */
function takeFrom<T>(groups: readonly Group<T>[], from: number, size: number): readonly Group<T>[] {
  let begin = 0;
  return groups.flatMap(({ title, items }) => {
    const taken = items.slice(Math.max(0, from - begin), Math.max(0, from + size - begin));
    begin += items.length;
    return taken.length > 0 ? [{ title, items: taken }] : [];
  });
}

function numberPages<T>(url: string, pages: readonly (readonly Group<T>[])[]): readonly Cut<T>[] {
  const total = pages.reduce((sum, groups) => sum + lengthOf(groups), 0);
  let before = 0;
  return pages.map((groups, here) => {
    const shown = lengthOf(groups);
    const turn = { url, here, pages: pages.length, before, shown, total };
    before += shown;
    return { groups, turn };
  });
}

function lengthOf<T>(groups: readonly Group<T>[]): number {
  return groups.reduce((sum, { items }) => sum + items.length, 0);
}

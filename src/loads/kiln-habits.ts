/** What a studio writes down for its firings time and again: offered, and said to be from last time. */
import { type Archive, type Firing, findById } from "../records/archive.ts";
import type { KindOfFiring } from "../terms/choices.ts";
import { compareIds, findIdFault, idKey } from "../terms/ids.ts";

/** Firings of the newest day first, and those without a day before them: they are to come. */
export function newestFirst({ firings }: Archive): readonly Firing[] {
  const dayOf = ({ record }: Firing) => record.on ?? "9999";
  return [...firings.values()].sort(
    (a, b) => compareIds(dayOf(b), dayOf(a)) || compareIds(b.id, a.id),
  );
}

/** The last firing of a kind that was lit in a kiln; of any kiln where none is named. */
export function lastOf(
  archive: Archive,
  kind: KindOfFiring,
  kiln: string | undefined,
): Firing | undefined {
  return newestFirst(archive).find(
    ({ record }) =>
      record.on !== undefined &&
      record.kind === kind &&
      (kiln === undefined || (record.kiln !== undefined && idKey(record.kiln) === idKey(kiln))),
  );
}

/** The kilns that firings name, the one that was lit last first, as it was written then. */
export function kilnsOf(archive: Archive): readonly string[] {
  const names = new Map<string, string>();
  for (const { record } of newestFirst(archive).toReversed()) {
    if (record.kiln === undefined) continue;
    names.delete(idKey(record.kiln));
    names.set(idKey(record.kiln), record.kiln);
  }
  return [...names.values()].toReversed();
}

/**
 * An id for a firing of a day, as the studio names them: the last one's with its day put in the place of
 * that one's, as in `g-250928`, or with the next number; else the kind's first letter and the day.
 *
 * @param on as ISO 8601
 */
export function nextFiringId(archive: Archive, kind: KindOfFiring, on: string): string {
  const last = lastOf(archive, kind, undefined);
  const named = last && (withDay(last, on) ?? nextNumber(archive, last.id));
  const id = named ?? `${kind.charAt(0)}-${shortDay(on)}`;
  return isFree(archive, id) ? id : firstFree(archive, id);
}

/** Days as ids have them: with the century or without, and only the month and the day. */
const dayForms: readonly ((on: string) => string)[] = [
  (on) => on,
  (on) => on.replaceAll("-", ""),
  shortDay,
  (on) => on.slice(5).replace("-", ""),
];

function shortDay(on: string): string {
  return on.slice(2).replaceAll("-", "");
}

function withDay({ id, record }: Firing, on: string): string | undefined {
  const form = dayForms.find((each) => record.on !== undefined && id.endsWith(each(record.on)));
  if (!form || record.on === undefined) return undefined;
  return id.slice(0, id.length - form(record.on).length) + form(on);
}

/** The next number that no firing has, those to come among them. */
function nextNumber(archive: Archive, id: string): string | undefined {
  const digits = /\d{1,6}$/u.exec(id)?.[0];
  if (digits === undefined) return undefined;
  const stem = id.slice(0, id.length - digits.length);
  for (let number = Number(digits) + 1; ; number += 1) {
    const next = stem + String(number).padStart(digits.length, "0");
    if (!findById(archive.firings, next)) return next;
  }
}

function isFree({ firings }: Archive, id: string): boolean {
  return findIdFault(id) === undefined && findById(firings, id) === undefined;
}

/** Two firings on one day: a letter behind the second. */
function firstFree(archive: Archive, id: string): string {
  const letters = "bcdefghijklmnopqrstuvwxyz";
  const free = [...letters].map((letter) => `${id}${letter}`).find((each) => isFree(archive, each));
  return free ?? `${id}-${archive.firings.size + 1}`;
}

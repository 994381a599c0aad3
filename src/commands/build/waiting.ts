/** What a site says of the records that were left out of it, and to whom. */

import type { WaitingRecord } from "../../../templates/words/site/waiting.ts";
import { clayUrl, firingUrl, glazeUrl, setUrl } from "../../catalogue/addresses.ts";
import type { Ground, LeftOut, WholeArchive } from "../../leaving-out/left-out.ts";
import { keyOf } from "../../leaving-out/owners.ts";
import { circleFinder, hiddenSets } from "../../leaving-out/shown-to.ts";
import { usersOf } from "../../leaving-out/users.ts";
import type { LocatedProblem } from "../../reader/locate.ts";
import type { Problem } from "../../records/problem.ts";
import type { StudioRecord } from "../../records/studio.ts";
import { idKey } from "../../terms/ids.ts";

/** Lists what waits, for the whole site (null) or for that of a set, by its id. */
export type WaitingLister = (set: string | null) => readonly WaitingRecord[];

/**
 * Makes the function that lists what a site was published without.
 *
 * @returns for the whole site (null) or for that of an unlisted set, by its id, the records that
 *   those may know of who see it
 */
export function waitingLister(
  whole: WholeArchive,
  leftOut: readonly LeftOut[],
  locate: (problem: Problem) => LocatedProblem,
): WaitingLister {
  if (leftOut.length === 0) return () => [];
  const circleOf = circleFinder(whole);
  const pagesOf = pageFinder(whole);
  const isSecret = secretFinder(whole);
  return (set) => {
    const mayKnow = (record: LeftOut) => {
      const circle = circleOf(record);
      if (set === null) return circle === "everyone";
      return circle !== "everyone" ? circle.has(idKey(set)) : pagesOf(record).has(setUrl(set));
    };
    return leftOut.filter(mayKnow).map((record) => {
      const { kind, id, file, faults, because } = record;
      const ground = because && leftOut.find((other) => isSame(other, because));
      return {
        ...{ kind, id, file },
        faults: faults.map((fault) => {
          const { line, message } = locate(fault);
          return { line, message: isSecret(fault, set) ? null : message };
        }),
        because: because && {
          kind: because.kind,
          id: ground && (circleOf(ground) === "everyone" || mayKnow(ground)) ? ground.id : null,
        },
        pages: [...pagesOf(record)],
      };
    });
  };
}

function isSame(record: LeftOut, { kind, id }: Ground): boolean {
  return record.kind === kind && idKey(record.id) === idKey(id);
}

/** The pages of sets, clays, glazes and firings that a record belongs on, by what it names. */
function pageFinder(whole: WholeArchive): (record: LeftOut) => ReadonlySet<string> {
  const pages = new Map<string, Set<string>>();
  const urls = { set: setUrl, clay: clayUrl, glaze: glazeUrl, firing: firingUrl } as const;
  const byKey = new Map(whole.files.map((file) => [keyOf(file), file]));
  const add = (file: string, url: string) =>
    pages.set(file, (pages.get(file) ?? new Set()).add(url));
  for (const [used, users] of usersOf(whole)) {
    const file = byKey.get(used);
    if (!file || !(file.kind in urls)) continue;
    const url = urls[file.kind as keyof typeof urls](file.id);
    for (const user of users) if (user.kind !== "set") add(user.file, url);
  }
  const sets = new Map(whole.files.flatMap((f) => (f.kind === "set" ? [[f.folder, f.id]] : [])));
  for (const { kind, file, folder } of whole.files) {
    const set = sets.get(folder);
    if (kind === "tile" && set !== undefined) add(file, setUrl(set));
  }
  return ({ file }) => pages.get(file) ?? new Set();
}

/**
 * Makes the function that says whether a fault's words may not be shown: those of makers, whose
 * codes are never published, and those that name a maker or what only another site may show.
 */
function secretFinder(whole: WholeArchive): (fault: Problem, set: string | null) => boolean {
  const namesSomebody = somebodyFinder(whole.archive.studio.makers);
  const hidden = hiddenSets(whole);
  const ofSets = whole.files.flatMap((file): [string, string][] => {
    const set = hidden.get(file.folder);
    return set === undefined ? [] : [[idKey(file.id), set]];
  });
  return (fault, set) => {
    if (namesSomebody(fault)) return true;
    const others = ofSets.filter(([, of]) => set === null || of !== idKey(set));
    const said = idKey(fault.message);
    return others.some(([word]) => speaksOf(said, word));
  };
}

/** Makes the function that says whether a fault's words name a maker, by the name or by the code. */
export function somebodyFinder(makers: StudioRecord["makers"] = {}): (fault: Problem) => boolean {
  const people = Object.entries(makers).flatMap(([key, { name = "" }]) => [
    idKey(key),
    ...name.split(/\s+/u).map(idKey),
  ]);
  return ({ path, code, message, hint }) => {
    if (path.some((step) => ["maker", "makers", "teacher"].includes(String(step)))) return true;
    if (/maker|person|name/u.test(code)) return true;
    const said = idKey(`${message} ${hint}`);
    return people.some((word) => speaksOf(said, word));
  };
}

/** Whether a text holds a word as a whole, not as a part of a longer one. */
function speaksOf(text: string, word: string): boolean {
  if (word === "") return false;
  for (let at = text.indexOf(word); at >= 0; at = text.indexOf(word, at + 1)) {
    const around = `${text[at - 1] ?? " "} ${text[at + word.length] ?? " "}`;
    if (!/[\p{L}\p{N}]/u.test(around)) return true;
  }
  return false;
}

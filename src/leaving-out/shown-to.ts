/**
 * Who may know of what is left out. A set that is reached only by its link must not be told of
 * elsewhere because a line in it is faulty; and where that very line may be the faulty one, the set
 * counts as such.
 */

import { findNearest } from "../records/suggest.ts";
import { idKey } from "../terms/ids.ts";
import type { LeftOut, WholeArchive } from "./left-out.ts";
import { keyOf } from "./owners.ts";
import { usersOf } from "./users.ts";

/** Of one record: everyone, or those alone who have the link of one of these sets, by their keys. */
export type Circle = "everyone" | ReadonlySet<string>;

/** Makes the function that says who may know of a record that is left out. */
export function circleFinder(whole: WholeArchive): (leftOut: LeftOut) => Circle {
  const hidden = hiddenSets(whole);
  const users = usersOf(whole);
  const sets = new Set(whole.files.flatMap((f) => (f.kind === "set" ? f.folder : [])));
  const ofFolder = (folder: string): Circle => {
    const set = hidden.get(folder);
    if (set !== undefined) return new Set([set]);
    return sets.has(folder) || !isFolderOfSet(folder) ? "everyone" : nobody;
  };
  const circleOf = (key: string, seen: ReadonlySet<string>): Circle => {
    const circles = (users.get(key) ?? []).flatMap((user): Circle[] => {
      if (user.kind !== "glaze") return [ofFolder(user.folder)];
      return seen.has(keyOf(user)) ? [] : [circleOf(keyOf(user), new Set([...seen, key]))];
    });
    return circles.length === 0 ? "everyone" : joinCircles(circles);
  };
  return (leftOut) => {
    const { kind, id, folder } = leftOut;
    // What lies beside the archive's own folders may be anything.
    if (kind === "file" && !/^(tiles|recipes)(\/|$)/u.test(idKey(folder))) return nobody;
    if (kind === "file" || kind === "tile" || kind === "set") return ofFolder(folder);
    return circleOf(keyOf({ kind, id }), new Set());
  };
}

const nobody: Circle = new Set();

/** What lies in such a folder without its set.md may be of a set that is not listed. */
function isFolderOfSet(folder: string): boolean {
  return /^tiles\/./u.test(idKey(folder)) && idKey(folder) !== "tiles/firings";
}

function joinCircles(circles: readonly Circle[]): Circle {
  const sets = circles.flatMap((circle) => (circle === "everyone" ? [] : [...circle]));
  return circles.includes("everyone") ? "everyone" : new Set(sets);
}

/** The keys of the sets that are not surely listed, by their folders. */
export function hiddenSets({ archive, files, texts }: WholeArchive): ReadonlyMap<string, string> {
  const hidden = files.filter((file) => {
    if (file.kind !== "set") return false;
    const set = archive.sets.get(idKey(file.id));
    if (set?.file === file.file) return set.record.listed === false;
    return !isSurelyListed(texts.get(file.file) ?? "");
  });
  return new Map(hidden.map(({ id, folder }) => [folder, idKey(id)]));
}

/**
 * It has at least a name, and no line of it begins as one does that hides a set, slips of the hand
 * included. Of a file that was emptied nobody can tell.
 */
function isSurelyListed(text: string): boolean {
  const firstWords = [...text.matchAll(/^[ \t>#'"“”-]*(\p{L}[\p{L}-]*)/gmu)].map(
    (match) => match[1] ?? "",
  );
  return (
    firstWords.includes("name") &&
    !firstWords.some((word) => findNearest(word, ["listed", "unlisted", "link"]))
  );
}

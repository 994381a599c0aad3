/** Who wrote a record down, as far as studio.yaml lets it be told. */
import type { Archive } from "../records/archive.ts";
import { findById } from "../records/archive.ts";
import type { MakerRecord } from "../records/studio.ts";
import { usesOf } from "../records/uses.ts";
import { compareIds } from "../terms/ids.ts";
import { shownName } from "./makers.ts";

/** Who wrote a record down. */
export interface WrittenBy {
  /** Names or initials, each once, in their order. */
  readonly names: readonly string[];
  /** Whether somebody else did too. How many is not told: it could tell who, and one may have two names. */
  readonly others: boolean;
}

/** Tells who wrote a record down; null where nobody of them may be named. */
export type FindWrittenBy = (authors: readonly string[]) => WrittenBy | null;

/**
 * Finds the makers under the names by which they commit. A name is told only where every maker who
 * has it lets it be told, and as little as any of them does.
 *
 * @param archive the whole archive, so that a name that two makers have is known to be both's
 */
export function committerFinder(archive: Archive): FindWrittenBy {
  const known = committersOf(archive);
  return (authors) => {
    const found = authors.map((author) => known.get(nameKey(author)) ?? null);
    const names = [...new Set(found)].filter((name) => name !== null).sort(compareIds);
    return names.length === 0 ? null : { names, others: found.includes(null) };
  };
}

/** What each name may be told as; null where it may not be told. */
function committersOf(archive: Archive): ReadonlyMap<string, string | null> {
  const unseen = makersOfUnlistedAlone(archive);
  const known = new Map<string, string | null>();
  for (const [key, maker] of Object.entries(archive.studio.makers ?? {})) {
    const told = unseen.has(key) ? null : (shownName(maker) ?? null);
    for (const name of namesOf(maker)) {
      const before = known.get(name);
      known.set(name, before === undefined ? told : leastOf(before, told));
    }
  }
  return known;
}

function namesOf({ name, commitsAs = [] }: MakerRecord): readonly string[] {
  return [...new Set([...(name === undefined ? [] : [name]), ...commitsAs].map(nameKey))];
}

/** Two makers of one name: the shorter of what both may be called, which are initials where one has them. */
function leastOf(a: string | null, b: string | null): string | null {
  if (a === null || b === null) return null;
  return a.length <= b.length ? a : b;
}

/** Makers of whom everyone else sees nothing. */
function makersOfUnlistedAlone(archive: Archive): ReadonlySet<string> {
  const [listed, unlisted] = [true, false].map((isListed) =>
    usesOf(
      {
        tiles: [...archive.tiles.values()].filter(
          ({ set }) => (findById(archive.sets, set)?.record.listed !== false) === isListed,
        ),
        sets: [...archive.sets.values()].filter(
          ({ record }) => (record.listed !== false) === isListed,
        ),
      },
      archive,
    ),
  );
  return new Set([...(unlisted?.makers ?? [])].filter((key) => !listed?.makers.has(key)));
}

/** Blanks and the ways to write one letter are no part of a name. */
function nameKey(name: string): string {
  return name.normalize("NFC").trim().replaceAll(/\s+/gu, " ");
}

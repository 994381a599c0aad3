/** What the pages of records say of their files: where they lie, and when they changed. */
import type { Archive, Filed } from "../records/archive.ts";
import { clayUrl, firingUrl, glazeUrl, materialUrl, setUrl, tileUrl } from "./addresses.ts";
import type { WrittenBy } from "./committers.ts";
import type { Common } from "./common.ts";
import type { Findings, RecordHistory } from "./findings.ts";
import { type TileStory, tileStories } from "./history/stories.ts";
import type { Alone } from "./studio.ts";

/** What is shown of a record's history. */
export interface RecordFacts extends Pick<RecordHistory, "path" | "state" | "first" | "last"> {
  /** Null where nobody may be named. */
  readonly by: WrittenBy | null;
  /** Of a tile that changed since it was first written; null of all others. */
  readonly story: TileStory | null;
}

/**
 * What is known of each record's file, by the address of its page; nothing where nobody asked git.
 * On a site of one set alone nothing is: who has its link, or its folder, was not asked to the repository.
 *
 * @param archive what is shown of it
 */
export function recordFacts(
  archive: Archive,
  findings: Findings,
  { findWrittenBy }: Common,
  alone: Alone | null,
): ReadonlyMap<string, RecordFacts> {
  const { history } = findings;
  if (!history || alone) return new Map();
  const stories = tileStories(archive, findings);
  const of = (records: ReadonlyMap<string, Filed<unknown>>, url: (id: string) => string) =>
    [...records.values()].flatMap(({ id, file }) => {
      const known = history.get(file);
      if (!known) return [];
      const { path, state, first, last, authors } = known;
      const story = stories.get(file) ?? null;
      return [[url(id), { path, state, first, last, by: findWrittenBy(authors), story }] as const];
    });
  return new Map([
    ...of(archive.tiles, tileUrl),
    ...of(archive.glazes, glazeUrl),
    ...of(archive.clays, clayUrl),
    ...of(archive.materials, materialUrl),
    ...of(archive.firings, firingUrl),
    ...of(archive.sets, setUrl),
  ]);
}

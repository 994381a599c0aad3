/** What the pages of records say of their files: where they lie, and when they changed. */
import type { Archive, Filed } from "../records/archive.ts";
import { clayUrl, firingUrl, glazeUrl, materialUrl, setUrl, tileUrl } from "./addresses.ts";
import type { WrittenBy } from "./committers.ts";
import type { Common } from "./common.ts";
import type { Findings, RecordHistory } from "./findings.ts";
import type { RecipeNames } from "./history/recipe-changes.ts";
import { type RecipeSince, recipeNames, recipesSince } from "./history/recipes-since.ts";
import { type GlazeStory, glazeStories, type TileStory, tileStories } from "./history/stories.ts";
import type { FindMaterialLink } from "./mixing/material-links.ts";
import type { Alone } from "./studio.ts";
import type { CatalogueTile } from "./tiles.ts";

/** What is shown of a record's history. */
export interface RecordFacts extends Pick<RecordHistory, "path" | "state" | "first" | "last"> {
  /** Null where nobody may be named. */
  readonly by: WrittenBy | null;
  /** Of a tile that changed since it was first written; null of all others. */
  readonly story: TileStory | null;
  /** Of a glaze whose recipe was changed since; null of all others. */
  readonly recipe: GlazeStory | null;
}

/** What a site is made from, as far as its history asks for it. */
interface Known {
  /** What is shown of it. */
  readonly archive: Archive;
  readonly findings: Findings;
  readonly common: Common;
  readonly tiles: readonly CatalogueTile[];
  readonly findLink: FindMaterialLink;
}

/** What git tells of an archive. */
export interface ToldByGit {
  /** What is known of each record's file, by the address of its page. */
  readonly records: ReadonlyMap<string, RecordFacts>;
  /** The recipes that were changed after a tile was glazed, by the address of the tile's page. */
  readonly recipesSince: ReadonlyMap<string, readonly RecipeSince[]>;
}

/**
 * What git tells of an archive; nothing where nobody asked it. The site of one set alone says nothing of its
 * records' files: who has its link, or its folder, was given a set, and days of commits tell who wrote in it and
 * when. That a recipe was changed since is told there as well, without the day.
 */
export function toldByGit(known: Known, alone: Alone | null): ToldByGit {
  const { archive, findings, tiles, findLink } = known;
  const names = recipeNames(archive, findLink);
  return {
    records: alone ? new Map() : recordFacts(known, names),
    recipesSince: recipesSince(archive, tiles, findings, { names, withDays: !alone }),
  };
}

function recordFacts(
  { archive, findings, common: { findWrittenBy } }: Known,
  names: RecipeNames,
): ReadonlyMap<string, RecordFacts> {
  const { history } = findings;
  if (!history) return new Map();
  const stories = tileStories(archive, findings);
  const recipes = glazeStories(archive, findings, names);
  const of = (records: ReadonlyMap<string, Filed<unknown>>, url: (id: string) => string) =>
    [...records.values()].flatMap(({ id, file }) => {
      const known = history.get(file);
      if (!known) return [];
      const { path, state, first, last, authors } = known;
      const told = { story: stories.get(file) ?? null, recipe: recipes.get(file) ?? null };
      return [
        [url(id), { path, state, first, last, by: findWrittenBy(authors), ...told }] as const,
      ];
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

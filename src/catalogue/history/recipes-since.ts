/**
 * Recipes that were changed after a tile was glazed: what is written there now, and all that is reckoned
 * from it, may not be what is on the tile. A commit's day is when a change was written down.
 */
import { type Archive, type Filed, findById } from "../../records/archive.ts";
import type { GlazeRecord } from "../../records/glaze.ts";
import { withBlended } from "../../records/uses.ts";
import { glazeUrl } from "../addresses.ts";
import type { Findings } from "../findings.ts";
import { firingsOf } from "../kilns/tile-firings.ts";
import { type Link, linkTo } from "../link.ts";
import type { CatalogueTile } from "../tiles.ts";
import { isSameRecipe, type RecipeNames } from "./recipe-changes.ts";

/** A recipe that was changed since a tile was glazed. */
export interface RecipeSince {
  readonly glaze: Link;
  /** The glaze of the tile that it is blended into; null where it is on the tile itself. */
  readonly within: Link | null;
  /** The day on which the change was committed; null where it was not yet, or no day is told here. */
  readonly day: string | null;
}

/** What a recipe was from a day on; null for a change that was not committed yet. */
interface DatedRecipe {
  readonly day: string | null;
  readonly record: GlazeRecord;
}

/**
 * The recipes that were changed after each tile was glazed, by the address of its page; nothing for a
 * tile of which no day is known.
 *
 * @param withDays whether the site may say on which
 */
export function recipesSince(
  archive: Archive,
  tiles: readonly CatalogueTile[],
  findings: Findings,
  { names, withDays }: { readonly names: RecipeNames; readonly withDays: boolean },
): ReadonlyMap<string, readonly RecipeSince[]> {
  const changing = new Map(
    [...archive.glazes].flatMap(([key, glaze]) => {
      const recipes = recipesOf(glaze, findings);
      const isChanging = recipes.some(({ record }) => !isSameRecipe(record, glaze.record, names));
      return isChanging ? [[key, recipes] as const] : [];
    }),
  );
  if (changing.size === 0) return new Map();
  const since = (tile: CatalogueTile) =>
    Object.values(tile.glazes).flatMap((top) =>
      [...withBlended([top.id], archive)].flatMap((key): RecipeSince[] => {
        const glaze = archive.glazes.get(key);
        const day = glaze && changeAfter(changing.get(key) ?? [], glaze.record, tile, names);
        const link = linkTo(glaze, glazeUrl);
        if (day === undefined || !link) return [];
        return [
          { glaze: link, within: link.id === top.id ? null : top, day: withDays ? day : null },
        ];
      }),
    );
  return new Map(
    tiles.flatMap((tile) => {
      const found = since(tile);
      return found.length > 0 ? [[tile.url, found] as const] : [];
    }),
  );
}

/**
 * What was written of a glaze, the oldest first: of each day the last, as its story tells it. Versions that
 * cannot be read are passed over.
 */
function recipesOf({ file, record }: Filed<GlazeRecord>, { history, written }: Findings) {
  const { versions = [] } = history?.get(file) ?? {};
  const dated = versions.flatMap(({ day, blob }): DatedRecipe[] => {
    const version = written?.glazes.get(blob);
    return version ? [{ day, record: version.record }] : [];
  });
  const ofDays = [...new Map(dated.map((recipe) => [recipe.day, recipe])).values()];
  return ofDays.length > 0 ? [...ofDays, { day: null, record }] : [];
}

/**
 * When a recipe was first changed after a tile was glazed, where it is another one now; undefined where it
 * was not, or nobody knows. The first version counts for whatever was glazed before it.
 */
function changeAfter(
  recipes: readonly DatedRecipe[],
  now: GlazeRecord,
  tile: CatalogueTile,
  names: RecipeNames,
): string | null | undefined {
  const glazed = glazedBy(tile);
  if (glazed === null || recipes.length === 0) return undefined;
  const isBefore = ({ day }: DatedRecipe) => day !== null && day <= glazed;
  const then = recipes.findLast(isBefore) ?? recipes[0];
  if (!then || isSameRecipe(then.record, now, names)) return undefined;
  return recipes
    .slice(recipes.indexOf(then) + 1)
    .find(({ record }) => !isSameRecipe(then.record, record, names))?.day;
}

/** The day on which a tile was glazed, or on which it was fired with its glaze at the latest. */
function glazedBy({ glazed, steps }: CatalogueTile): string | null {
  if (glazed !== null) return glazed;
  const days = firingsOf(steps).flatMap(({ kind, on }) => (kind === "bisque" ? [] : (on ?? [])));
  return days.sort()[0] ?? null;
}

/** What recipes name, as a site shows it. */
export function recipeNames(
  { glazes }: Archive,
  material: (id: string) => Link | undefined,
): RecipeNames {
  return {
    material: (written) => material(written) ?? null,
    glaze: (written) => linkTo(findById(glazes, written), glazeUrl),
  };
}

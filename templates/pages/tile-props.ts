/** What a tile's page is given. */

import type { RecipeSince } from "../../src/catalogue/history/recipes-since.ts";
import type { TileStory } from "../../src/catalogue/history/stories.ts";
import type { Link } from "../../src/catalogue/link.ts";
import type { CatalogueTile } from "../../src/catalogue/tiles.ts";
import type { TemperatureUnit } from "../../src/firing/units.ts";
import type { LayerView } from "../drawing/layer-view.ts";
import type { TileEntry } from "../parts/entry.ts";
import type { Frame } from "../parts/frame.ts";
import type { ChangeGroup } from "../parts/one-change.tsx";
import type { RecordFootProps } from "../parts/record-foot.tsx";

export interface TilePageProps {
  readonly frame: Frame;
  readonly tile: CatalogueTile;
  readonly names: string;
  readonly view: LayerView;
  /** The unit of temperature that the studio reads first. */
  readonly unit: TemperatureUnit;
  /** The tiles before and after it on the wall. */
  readonly before: Link | null;
  readonly after: Link | null;
  /** Tiles with a result that are at most one change apart from this one, by what changed. */
  readonly oneChange: readonly ChangeGroup[];
  /** Tiles that differ in exactly two things, where few differ in one; null where there are none. */
  readonly twoChanges: ChangeGroup | null;
  /** Tiles that a reader may want next, and what they have in common with this one. */
  readonly related: readonly {
    readonly title: string;
    /** The page that has all of them. */
    readonly url: string;
    /** How many those are. */
    readonly of: number;
    readonly tiles: readonly TileEntry[];
  }[];
  /** The programmes of its firings, as far as they were written down. */
  readonly programmes: readonly { readonly firing: string; readonly words: string }[];
  /** How the same coat stack came out elsewhere, in a sentence; null where it is the only one. */
  readonly record: string | null;
  /** Null where the page says nothing of its file. */
  readonly foot: RecordFootProps | null;
  /** What was known of it when; null where its record did not change, or nobody asked git. */
  readonly story: TileStory | null;
  /** Recipes that were changed after it was glazed. */
  readonly recipesSince: readonly RecipeSince[];
}

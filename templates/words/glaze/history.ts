/** When a recipe was changed, and what that means for tiles. */
import type { RecipeChange, RecipePart } from "../../../src/catalogue/history/recipe-changes.ts";
import type { RecipeSince } from "../../../src/catalogue/history/recipes-since.ts";
import type { GlazeStory } from "../../../src/catalogue/history/stories.ts";
import { count, formatDay } from "../english/numbers.ts";
import { type RecordStoryWords, storyWords } from "../site/record.ts";

const recipeHistoryTitle = "When the recipe was changed";

/** What its days mean. */
const recipeHistoryLede =
  "The days on which changes went into the archive. That is when they were written down, not when the bucket was changed.";

/** The story as the glaze's page lays it out; null where the recipe never changed. */
export function recipeHistory(story: GlazeStory | null): RecordStoryWords | null {
  const told = { title: recipeHistoryTitle, lede: recipeHistoryLede };
  return story && { ...told, ...storyWords(story, recipeChangeWords) };
}

export function recipeChangeWords(change: RecipeChange): string {
  switch (change.what) {
    case "first":
      return "written down";
    case "parts":
      return change.parts.map(partWords).join("; ");
    case "measure":
      return `measured by ${change.by} now`;
    default:
      return "a version that cannot be read";
  }
}

/** `Whiting, 20 → 18 parts`; `added: Talc, 5 parts`. */
function partWords({ name, isAddition, before, after }: RecipePart): string {
  const what = `${name ?? "something that is not shown here"}${isAddition ? " as an addition" : ""}`;
  if (before === null) return `added: ${what}, ${count(after ?? 0, "part")}`;
  if (after === null) return `taken out: ${what}, ${count(before, "part")}`;
  return `${what}, ${before} → ${count(after, "part")}`;
}

/** What a tile says of a recipe that was changed since, after the name of the glaze. */
export function recipeSinceWords({ within, day }: Pick<RecipeSince, "day" | "within">): string {
  const where = within === null ? "" : `, which is blended into ${within.name},`;
  const when = day === null ? "" : ` (on ${formatDay(day)})`;
  return `${where} was changed after this tile was glazed${when}: what is written there may not be what is on this tile.`;
}

/** Said once after them. */
export function recipeSinceNote(since: readonly Pick<RecipeSince, "day">[]): string {
  const day = since.some((one) => one.day !== null)
    ? "A day is when a change was written down; the"
    : "The";
  return `${day} bucket itself may have been changed earlier, or later.`;
}

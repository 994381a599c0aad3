/** What was known of a tile when, below all else that its page says; it opens without a script. */
import type { VNode } from "preact";
import type { TileStory } from "../../src/catalogue/history/stories.ts";
import {
  earlierWords,
  historyLines,
  tileHistoryLede,
  tileHistoryTitle,
} from "../words/tile/history.ts";

export function TileHistory({ story }: { readonly story: TileStory | null }): VNode | null {
  if (!story) return null;
  const earlier = earlierWords(story);
  return (
    <details class="record-story">
      <summary>{tileHistoryTitle}</summary>
      <p>{tileHistoryLede}</p>
      {earlier && <p>{earlier}</p>}
      <ol>
        {historyLines(story).map(({ day, words }) => (
          <li>
            <b>{day}:</b> {words}
          </li>
        ))}
      </ol>
    </details>
  );
}

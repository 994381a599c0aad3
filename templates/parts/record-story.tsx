/** What a record said when, below all else that its page says; it opens without a script. */
import type { VNode } from "preact";
import type { RecordStoryWords } from "../words/site/record.ts";

export function RecordStory({ of }: { readonly of: RecordStoryWords | null }): VNode | null {
  if (!of) return null;
  return (
    <details class="record-story">
      <summary>{of.title}</summary>
      <p>{of.lede}</p>
      {of.earlier && <p>{of.earlier}</p>}
      <ol>
        {of.lines.map(({ day, words }) => (
          <li>
            <b>{day}:</b> {words}
          </li>
        ))}
      </ol>
    </details>
  );
}

/** Where there is no tile yet, and where the nearest is. */
import type { VNode } from "preact";
import type { GapWords } from "../words/clay/clay.ts";

export function Gaps({
  root,
  gaps,
}: {
  readonly root: string;
  readonly gaps: readonly GapWords[];
}): VNode | null {
  if (gaps.length === 0) return null;
  return (
    <ul class="gaps quiet">
      {gaps.map(({ told, link, url }) => (
        <li>
          {told} <a href={root + url}>{link}</a>.
        </li>
      ))}
    </ul>
  );
}

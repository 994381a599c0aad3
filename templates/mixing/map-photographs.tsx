/** The photographs of a map's glazes, in the order of their ratio, each with its number. */
import type { VNode } from "preact";
import type { TileEntry } from "../parts/entry.ts";
import { SmallPhotograph } from "../parts/photograph.tsx";
import { NoPhotograph } from "../parts/wall.tsx";
import { listed, spoken } from "../words/english/numbers.ts";
import { ratioWords } from "../words/mixing/map.ts";
import type { NumberedMark } from "./ratio-map.tsx";

/** A mark with the tile whose photograph is shown for it; null where none has one. */
export interface ShownMark extends NumberedMark {
  readonly tile: TileEntry | null;
}

interface PhotographsProps {
  readonly root: string;
  readonly marks: readonly ShownMark[];
}

export function MapPhotographs({ root, marks }: PhotographsProps): VNode {
  return (
    <ol class="wall map-photographs">
      {marks.map((shown) => (
        <li>
          <a href={root + (shown.tile?.url ?? shown.glaze.url)}>
            {shown.tile?.picture ? (
              <SmallPhotograph root={root} picture={shown.tile.picture} turn="late" />
            ) : (
              <NoPhotograph tile={{ stage: shown.tile?.stage ?? "waiting" }} />
            )}
            <span class="code">{shown.number}</span>
            <span class="names">{shown.glaze.name}</span>
            <span class="came">
              {[ratioWords(shown.ratio), listed(shown.surface.map(spoken)), shown.loud]
                .filter(Boolean)
                .join(", ")}
            </span>
          </a>
        </li>
      ))}
    </ol>
  );
}

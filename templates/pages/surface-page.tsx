/** All tiles of one surface, by cone: the first of each, and the way to the others. */
import type { VNode } from "preact";
import { Document } from "../parts/document.tsx";
import type { TileEntry } from "../parts/entry.ts";
import type { Frame } from "../parts/frame.ts";
import { Wall } from "../parts/wall.tsx";
import { count } from "../words/english/numbers.ts";
import { partWords } from "../words/english/turning.ts";

export interface SurfacePageProps {
  readonly frame: Frame;
  readonly title: string;
  readonly sentence: string;
  readonly groups: readonly {
    readonly title: string;
    /** The page that has all tiles of the group. */
    readonly url: string;
    /** How many those are. */
    readonly tiles: number;
    readonly shown: readonly TileEntry[];
  }[];
  /** The same choice on the wall, as the part of its address after `?`. */
  readonly wall: string;
}

export function SurfacePage({ frame, title, sentence, groups, wall }: SurfacePageProps): VNode {
  const { root } = frame;
  return (
    <Document
      styles="surface"
      frame={frame}
      title={title}
      summary={sentence}
      section="wall"
      kind="entry"
    >
      <header class="opening">
        <h1>{title}</h1>
        <p class="lede">{sentence}</p>
        <p class="quiet">
          <a href={`${root}index.html?${wall}`}>Narrow all of them down on the wall</a>
        </p>
      </header>
      {groups.map(({ title: heading, url, tiles, shown }, i) => (
        <section>
          <h2>
            <a href={root + url}>{heading}</a>{" "}
            {shown.length < tiles ? partWords(shown.length, tiles) : count(tiles, "tile")}
          </h2>
          <Wall root={root} tiles={shown} first={i === 0} />
        </section>
      ))}
    </Document>
  );
}

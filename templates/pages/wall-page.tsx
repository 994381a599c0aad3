/** The home page: what this is in one sentence, the ways in, and every tile. */
import type { VNode } from "preact";
import { Document } from "../parts/document.tsx";
import type { TileEntry } from "../parts/entry.ts";
import type { Frame } from "../parts/frame.ts";
import { Wall } from "../parts/wall.tsx";
import { count } from "../words/english/numbers.ts";
import { waitingSentence } from "../words/site/waiting.ts";

/** A way in: a name, where it leads, how many tiles are there. */
export interface WayIn {
  readonly name: string;
  readonly url: string;
  readonly tiles: number;
}

export interface WallPageProps {
  readonly frame: Frame;
  /** Of the whole archive. */
  readonly total: number;
  /** The tiles of this page of the wall. */
  readonly tiles: readonly TileEntry[];
  readonly cones: readonly WayIn[];
  readonly surfaces: readonly WayIn[];
  readonly glazes: readonly WayIn[];
  /** This page of the wall and the others: a wall of many thousand is cut into several. */
  readonly pages: readonly string[];
  readonly here: number;
}

export function WallPage(props: WallPageProps): VNode {
  const { frame, total, tiles, pages, here } = props;
  const sentence = `${count(total, "glaze test")}: what went on each tile, in which order, how it was fired, and what came out.`;
  return (
    <Document
      frame={frame}
      title={here === 0 ? frame.studio : `Tiles, page ${here + 1}`}
      summary={`${frame.studio}: ${sentence}`}
      section="wall"
      kind="home"
      scripts={["data/facets.js", "assets/wall.js"]}
    >
      <header class="opening">
        <h1>
          {total > 0
            ? sentence
            : "No tiles yet. The first record in tiles/ is the first on this wall."}
        </h1>
        {frame.waiting && here === 0 && (
          <p class="waiting-home" role="note">
            {waitingSentence(frame.waiting.records)}{" "}
            <a href={`${frame.root}waiting.html`}>Which, and what is wrong with them</a>
          </p>
        )}
      </header>
      <div id="finder" hidden data-root={frame.root} />
      <WaysIn {...props} />
      <div id="found" aria-live="polite" class="found" />
      <Wall root={frame.root} tiles={tiles} first id="wall" />
      {pages.length > 1 && <OtherPages root={frame.root} pages={pages} here={here} />}
    </Document>
  );
}

/** Without a script these lead everywhere; with one, the finder takes their place. */
function WaysIn({ frame, cones, surfaces, glazes }: WallPageProps): VNode {
  return (
    <nav id="ways-in" class="ways-in" aria-label="Ways in">
      <WayLine root={frame.root} label="Cone" ways={cones} mono />
      <WayLine root={frame.root} label="Surface" ways={surfaces} />
      <WayLine root={frame.root} label="Glaze" ways={glazes} />
    </nav>
  );
}

interface WayLineProps {
  readonly root: string;
  readonly label: string;
  readonly ways: readonly WayIn[];
  readonly mono?: boolean;
}

function WayLine({ root, label, ways, mono = false }: WayLineProps): VNode | null {
  if (ways.length === 0) return null;
  return (
    <div class="way-line">
      <h2>{label}</h2>
      <ul class={mono ? "code" : undefined}>
        {ways.map(({ name, url, tiles }) => (
          <li>
            <a href={root + url}>
              {name} <small>{tiles}</small>
            </a>
          </li>
        ))}
      </ul>
    </div>
  );
}

function OtherPages(props: {
  readonly root: string;
  readonly pages: readonly string[];
  readonly here: number;
}): VNode {
  return (
    <nav class="pages" aria-label="Pages of the wall">
      {props.pages.map((page, i) => (
        <a href={props.root + page} {...(i === props.here && { "aria-current": "page" as const })}>
          {i + 1}
        </a>
      ))}
    </nav>
  );
}

/** The home page: what this is in one sentence, the ways in, and every tile. */
import type { VNode } from "preact";
import { siteOf } from "../linked/things.ts";
import { Document } from "../parts/document.tsx";
import type { TileEntry } from "../parts/entry.ts";
import { Finder, type FinderProps } from "../parts/finder.tsx";
import type { Frame } from "../parts/frame.ts";
import type { LeadPicture } from "../parts/lead-picture.ts";
import { renderOwnWords } from "../parts/own-words.ts";
import type { Turn } from "../parts/turn.ts";
import { TurnPages } from "../parts/turn-pages.tsx";
import { Wall, type WallCut } from "../parts/wall.tsx";
import { formTitle } from "../words/add/form.ts";
import { count, grouped } from "../words/english/numbers.ts";
import { pageTitle } from "../words/english/turning.ts";
import { allTiles } from "../words/site/finder.ts";
import { waitingSentence } from "../words/site/waiting.ts";

/** A way in: a name, where it leads, how many tiles are there. */
export interface WayIn {
  readonly name: string;
  readonly url: string;
  readonly tiles: number;
}

export interface WallPageProps {
  readonly frame: Frame;
  /** The studio's own words, as Markdown; null on the further pages of the wall. */
  readonly welcome: string | null;
  /** The set that this site shows alone, on its first page; null on a site that shows more. */
  readonly alone: { readonly name: string; readonly url: string } | null;
  /** Of the whole archive. */
  readonly total: number;
  /** The tiles of this page of the wall. */
  readonly tiles: readonly TileEntry[];
  /** The first photograph of its tiles. */
  readonly lead: LeadPicture | null;
  /** The file that lists all data files; null where there are none, and on the further pages. */
  readonly manifest: string | null;
  /** Null on the further pages of the wall. */
  readonly ways: WaysIn | null;
  readonly turn: Turn;
  /** How many tiles the first page of the wall has, and how many each of the others. */
  readonly cut: WallCut;
  /** What tiles can be found by. */
  readonly finder: Omit<FinderProps, "root">;
}

/** Where to look for a tile that one does not know yet. */
export interface WaysIn {
  readonly cones: readonly WayIn[];
  readonly surfaces: readonly WayIn[];
  /** Those on most tiles. */
  readonly glazes: readonly WayIn[];
  /** How many glazes the list of all of them has; null where all that are on tiles are named here. */
  readonly allGlazes: number | null;
}

export function WallPage(props: WallPageProps): VNode {
  const { frame, total, tiles, ways, turn } = props;
  const sentence = `${count(total, "glaze test")}: what went on each tile, in which order, how it was fired, and what came out.`;
  return (
    <Document
      styles="wall"
      frame={frame}
      title={turn.here === 0 ? frame.studio : pageTitle("Tiles", turn.here, turn.pages)}
      summary={`${frame.studio}: ${sentence}`}
      section="wall"
      lead={props.lead}
      describedBy={props.manifest}
      linked={turn.here === 0 ? [siteOf(frame, sentence)] : []}
      kind="home"
      scripts={["data/facets.js", "assets/wall.js"]}
    >
      <WallHead {...props} sentence={sentence} />
      {total > 0 && <Finder {...props.finder} root={frame.root} />}
      {ways && <WaysInLines root={frame.root} ways={ways} />}
      <div id="found" aria-live="polite" class="found">
        {total > 0 && <p>{allTiles(total)}</p>}
      </div>
      <Wall root={frame.root} tiles={tiles} first id="wall" cut={props.cut} />
      <TurnPages root={frame.root} turn={turn} many="tiles" />
    </Document>
  );
}

/** What the catalogue holds, the studio's welcome, and where else one may want to go first. */
function WallHead(props: WallPageProps & { readonly sentence: string }): VNode {
  const { frame, total, turn, sentence } = props;
  return (
    <header class="opening">
      <h1>
        {total === 0
          ? "No tiles yet. The first record in tiles/ is the first on this wall."
          : turn.here === 0
            ? sentence
            : pageTitle("Tiles", turn.here, turn.pages)}
      </h1>
      {props.welcome !== null && (
        <div
          class="welcome"
          dangerouslySetInnerHTML={{ __html: renderOwnWords(props.welcome, frame) }}
        />
      )}
      {frame.form !== null && turn.here === 0 && (
        <p class="quiet screen">
          Glazed one? <a href={frame.root + frame.form}>{formTitle}</a>
        </p>
      )}
      {props.alone && (
        <p class="measure">
          All of them are of <a href={frame.root + props.alone.url}>{props.alone.name}</a>: its page
          has what it is about, what it found out, and its book to print.
        </p>
      )}
      {frame.waiting && turn.here === 0 && (
        <p class="waiting-home" role="note">
          {waitingSentence(frame.waiting.records)}{" "}
          <a href={`${frame.root}waiting.html`}>Which, and what is wrong with them</a>
        </p>
      )}
    </header>
  );
}

/** These lead everywhere without a script; where scripts run, the finder is in their place. */
function WaysInLines({ root, ways }: { readonly root: string; readonly ways: WaysIn }): VNode {
  const { cones, surfaces, glazes, allGlazes } = ways;
  return (
    <nav id="ways-in" class="ways-in" aria-label="Ways in">
      <WayLine root={root} label="Cone" ways={cones} mono />
      <WayLine root={root} label="Surface" ways={surfaces} />
      <WayLine root={root} label="Glaze" ways={glazes} all={allGlazes} />
    </nav>
  );
}

interface WayLineProps {
  readonly root: string;
  readonly label: string;
  readonly ways: readonly WayIn[];
  readonly mono?: boolean;
  /** How many there are, where not all are named. */
  readonly all?: number | null;
}

function WayLine({ root, label, ways, mono = false, all = null }: WayLineProps): VNode | null {
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
        {all !== null && (
          <li>
            <a href={`${root}glazes/index.html`}>all {grouped(all)} glazes</a>
          </li>
        )}
      </ul>
    </div>
  );
}

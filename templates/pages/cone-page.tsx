/** All that was fired at one cone, and the same for one of its surfaces. */
import type { VNode } from "preact";
import { type Cone, coneSlug } from "../../src/terms/cones.ts";
import { Document } from "../parts/document.tsx";
import type { Frame } from "../parts/frame.ts";
import { Gaps } from "../parts/gaps.tsx";
import type { Turn } from "../parts/turn.ts";
import { PartLine, TurnPages } from "../parts/turn-pages.tsx";
import type { GapWords } from "../words/clay/clay.ts";
import { count } from "../words/english/numbers.ts";
import { type MorePageProps, TileGroups } from "./more-page.tsx";

/** A cone and its surfaces, each with the number of its tiles. */
export interface ConeWays {
  readonly cone: Cone;
  readonly url: string;
  readonly tiles: number;
  readonly surfaces: readonly {
    readonly surface: string;
    readonly url: string;
    readonly tiles: number;
  }[];
}

export interface ConePageProps {
  readonly frame: Frame;
  readonly cone: ConeWays;
  /** The first of its tiles, and how the list goes on. */
  readonly groups: MorePageProps["groups"];
  readonly turn: Turn;
  readonly wall: string | null;
  readonly sentence: string;
  /** The surface that the page is narrowed to; null for all of them. */
  readonly surface: string | null;
  /** Looks of clay that no tile of it has. */
  readonly gaps: readonly GapWords[];
  /** The map of its mixed glazes; null where none was fired alone. */
  readonly map: string | null;
}

export function ConePage(props: ConePageProps): VNode {
  const { frame, cone, surface, map, sentence, turn } = props;
  return (
    <Document
      styles="cone"
      frame={frame}
      title={coneTitle(cone.cone, surface)}
      summary={sentence}
      section="cones"
      kind="entry"
    >
      <header class="opening">
        <h1>
          Cone <span class="cone-name">{cone.cone}</span>
          {surface && `, ${surface}`}
        </h1>
        <p class="lede">{sentence}</p>
        <SurfaceLinks root={frame.root} cone={cone} surface={surface} />
        <Gaps root={frame.root} gaps={props.gaps} />
        {surface === null && (
          <p class="quiet">
            One glaze over another at this cone, and what nobody has tried:{" "}
            <a href={`${frame.root}grid.html?cone=${coneSlug(cone.cone)}`}>the grid</a>.
          </p>
        )}
        {map !== null && (
          <p class="quiet">
            The glazes mixed here, by silica and alumina: <a href={frame.root + map}>the map</a>.
          </p>
        )}
      </header>
      <PartLine root={frame.root} turn={turn} many="tiles" wall={props.wall} />
      <TileGroups root={frame.root} groups={props.groups} first />
      <TurnPages root={frame.root} turn={turn} many="tiles" />
    </Document>
  );
}

/** `Cone 6, satin`. */
export function coneTitle(cone: Cone, surface: string | null): string {
  return surface ? `Cone ${cone}, ${surface}` : `Cone ${cone}`;
}

/** `48 satin tiles fired to cone 6, …`, and how many wait to be. */
export function coneSentence(
  cone: Cone,
  surface: string | null,
  tiles: { readonly fired: number; readonly waiting: number },
): string {
  const { fired, waiting } = tiles;
  if (fired === 0) return `${count(waiting, "tile")} to be fired to cone ${cone}.`;
  const kind = surface ? `${surface} tile` : "tile";
  const told = `${count(fired, kind)} fired to cone ${cone}, by the witness cone on ${fired === 1 ? "its" : "their"} own shelf where one was set`;
  return waiting === 0 ? `${told}.` : `${told}; ${waiting} still to be fired.`;
}

function SurfaceLinks(props: {
  readonly root: string;
  readonly cone: ConeWays;
  readonly surface: string | null;
}): VNode {
  const { root, cone, surface } = props;
  return (
    <nav class="way-line" aria-label="By surface">
      <h2>Surface</h2>
      <ul>
        <li>
          <a href={root + cone.url} {...(surface === null && { "aria-current": "page" as const })}>
            any <small>{cone.tiles}</small>
          </a>
        </li>
        {cone.surfaces.map((way) => (
          <li>
            <a
              href={root + way.url}
              {...(surface === way.surface && { "aria-current": "page" as const })}
            >
              {way.surface} <small>{way.tiles}</small>
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
}

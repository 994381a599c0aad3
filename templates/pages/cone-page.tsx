/** All that was fired at one cone, and the same for one of its surfaces. */
import type { VNode } from "preact";
import type { CatalogueCone } from "../../src/catalogue/cones.ts";
import { Document } from "../parts/document.tsx";
import type { TileEntry } from "../parts/entry.ts";
import type { Frame } from "../parts/frame.ts";
import { Wall } from "../parts/wall.tsx";
import { count } from "../words/english/numbers.ts";

export interface ConePageProps {
  readonly frame: Frame;
  readonly cone: CatalogueCone;
  readonly tiles: readonly TileEntry[];
  /** The surface that the page is narrowed to; null for all of them. */
  readonly surface: string | null;
  /** The map of its mixed glazes; null where none was fired alone. */
  readonly map: string | null;
}

export function ConePage({ frame, cone, tiles, surface, map }: ConePageProps): VNode {
  const kind = surface ? `${surface} tile` : "tile";
  const sentence = `${count(tiles.length, kind)} fired to cone ${cone.cone}, by the witness cone on ${tiles.length === 1 ? "its" : "their"} own shelf where one was set.`;
  return (
    <Document
      frame={frame}
      title={surface ? `Cone ${cone.cone}, ${surface}` : `Cone ${cone.cone}`}
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
        {map !== null && (
          <p class="quiet">
            The glazes mixed here, by silica and alumina: <a href={frame.root + map}>the map</a>.
          </p>
        )}
      </header>
      <Wall root={frame.root} tiles={tiles} first />
    </Document>
  );
}

function SurfaceLinks(props: {
  readonly root: string;
  readonly cone: CatalogueCone;
  readonly surface: string | null;
}): VNode {
  const { root, cone, surface } = props;
  return (
    <nav class="way-line" aria-label="By surface">
      <h2>Surface</h2>
      <ul>
        <li>
          <a href={root + cone.url} {...(surface === null && { "aria-current": "page" as const })}>
            any <small>{cone.tiles.length}</small>
          </a>
        </li>
        {cone.surfaces.map((way) => (
          <li>
            <a
              href={root + way.url}
              {...(surface === way.surface && { "aria-current": "page" as const })}
            >
              {way.surface} <small>{way.tiles.length}</small>
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
}

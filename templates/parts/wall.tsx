/** Photographs edge to edge, all of one shape: the wall, and the strip, which is one row of it. */
import type { VNode } from "preact";
import { LayerDrawing } from "../drawing/layer-drawing.tsx";
import { stageName } from "../words/tile/outcome.ts";
import type { TileEntry } from "./entry.ts";
import { Photograph } from "./photograph.tsx";

interface WallProps {
  readonly root: string;
  readonly tiles: readonly TileEntry[];
  /** True where the wall is the first thing on the page. */
  readonly first?: boolean;
  readonly id?: string;
}

const sizes = "(min-width: 60rem) 12rem, (min-width: 34rem) 14rem, 50vw";

/** How many photographs are asked for at once, before anybody scrolls. */
const eager = 6;

export function Wall({ root, tiles, first = false, id }: WallProps): VNode {
  return (
    <ol class="wall" {...(id !== undefined && { id })}>
      {tiles.map((tile, i) => (
        <WallTile root={root} tile={tile} first={first && i < eager} />
      ))}
    </ol>
  );
}

/** One row of tiles, which scrolls sideways where it is too long. */
export function Strip({ root, tiles }: WallProps): VNode {
  return (
    <ol class="wall strip">
      {tiles.map((tile) => (
        <WallTile root={root} tile={tile} first={false} />
      ))}
    </ol>
  );
}

function WallTile({
  root,
  tile,
  first,
}: {
  readonly root: string;
  readonly tile: TileEntry;
  readonly first: boolean;
}): VNode {
  return (
    <li>
      <a href={root + tile.url}>
        {tile.picture ? (
          <Photograph
            root={root}
            picture={tile.picture}
            sizes={sizes}
            alt=""
            first={first}
            widest={640}
          />
        ) : (
          <NoPhotograph tile={tile} />
        )}
        <span class="code">{tile.id}</span>
        <LayerDrawing view={tile.view} />
        <span class="names">{tile.names || "No glaze"}</span>
      </a>
    </li>
  );
}

/** A tile that has no photograph yet says why. */
export function NoPhotograph({ tile }: { readonly tile: Pick<TileEntry, "stage"> }): VNode {
  return (
    <span class="photograph none">
      <span>{stageName(tile.stage)}</span>
    </span>
  );
}

/** Photographs edge to edge, all of one shape: the wall, and the strip, which is one row of it. */
import type { VNode } from "preact";
import { renderToString } from "preact-render-to-string";
import { LayerDrawing } from "../drawing/layer-drawing.tsx";
import { stageName } from "../words/tile/outcome.ts";
import { CardOutcome } from "./card-outcome.tsx";
import type { TileEntry } from "./entry.ts";
import { SmallPhotograph, type Turn } from "./photograph.tsx";

interface WallProps {
  readonly root: string;
  readonly tiles: readonly TileEntry[];
  /** True where the wall is the first thing on the page. */
  readonly first?: boolean;
  readonly id?: string;
  /** For the finder, which loads cards from the wall's other pages. */
  readonly cut?: WallCut;
}

/** How many tiles the first page of the wall has, and how many each of the others. */
export interface WallCut {
  readonly first: number;
  readonly later: number;
}

/** How many photographs are asked for at once, before anybody scrolls. */
const soon = 6;

function turnOf(place: number): Turn {
  if (place === 0) return "first";
  return place < soon ? "soon" : "late";
}

export function Wall({ root, tiles, first = false, id, cut }: WallProps): VNode {
  return (
    <ol
      class="wall"
      {...(id !== undefined && { id })}
      {...(cut && { "data-first": cut.first, "data-later": cut.later })}
      {...cards(tiles, (tile, i) => cardOf(tile, root, first ? turnOf(i) : "late"))}
    />
  );
}

/** One row of tiles, which scrolls sideways where it is too long. */
export function Strip({ root, tiles }: WallProps): VNode {
  return <ol class="wall strip" {...cards(tiles, (tile) => cardOf(tile, root, "late"))} />;
}

function cards(
  tiles: readonly TileEntry[],
  card: (tile: TileEntry, place: number) => string,
): { readonly dangerouslySetInnerHTML: { readonly __html: string } } {
  return { dangerouslySetInnerHTML: { __html: tiles.map(card).join("") } };
}

/** The cards of a tile that were rendered before, by where they stand. */
const rendered = new WeakMap<TileEntry, Map<string, string>>();

/**
 * A card as markup. A tile has the same one on every page of a depth, and cards are most of what a
 * page is made of: each is rendered once, as everything else is, so that no word of a record
 * reaches a page but as text.
 */
function cardOf(tile: TileEntry, root: string, turn: Turn): string {
  const known = rendered.get(tile) ?? new Map<string, string>();
  rendered.set(tile, known);
  const place = `${turn} ${root}`;
  const card = known.get(place) ?? renderToString(<Card root={root} tile={tile} turn={turn} />);
  known.set(place, card);
  return card;
}

function Card(props: {
  readonly root: string;
  readonly tile: TileEntry;
  readonly turn: Turn;
}): VNode {
  const { root, tile, turn } = props;
  return (
    <li>
      <a href={root + tile.url}>
        {tile.picture ? (
          <SmallPhotograph root={root} picture={tile.picture} turn={turn} />
        ) : (
          <NoPhotograph tile={tile} />
        )}
        <span class="code">{tile.id}</span>
        <LayerDrawing view={tile.view} />
        <span class="names">{tile.names || "No glaze"}</span>
        <CardOutcome of={tile.outcome} />
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

/** Two glazes side by side: each over the other and each alone, a row for so many coats in one circumstance. */
import type { VNode } from "preact";
import { Codes, type NamedCodes } from "./codes.tsx";
import type { TileEntry } from "./entry.ts";
import { SmallPhotograph } from "./photograph.tsx";
import { NoPhotograph } from "./wall.tsx";

export interface PairTableView {
  readonly circumstances: readonly {
    /** `Cone 6, oxidation, Buff stoneware, an L-shaped tile` */
    readonly heading: string;
    /** `left to cool` */
    readonly fired: string;
    readonly rows: readonly PairRowView[];
  }[];
  /** So many rows more are not shown. */
  readonly moreRows: number;
}

export interface PairRowView {
  /** `2 coats of Chalk, 2 of Oilskin` */
  readonly coats: string;
  readonly cells: readonly PairCellView[];
}

export interface PairCellView {
  /** `Chalk over Oilskin` */
  readonly name: string;
  readonly tiles: readonly TestedTile[];
  /** More tiles of the same. */
  readonly more: NamedCodes;
  /** What is not quite the same, and what of it. */
  readonly otherwise: { readonly words: string; readonly codes: NamedCodes } | null;
  /** What an empty square says. */
  readonly none: string;
}

/** A tile with all that came of it in words. */
export interface TestedTile {
  readonly entry: TileEntry;
  readonly how: string;
  readonly came: string;
  /** The first of what its maker wrote; empty where that was nothing. */
  readonly line: string;
  readonly nextTime: string;
}

export function PairTable(props: { readonly root: string; readonly table: PairTableView }): VNode {
  const { root, table } = props;
  return (
    <>
      {table.circumstances.map(({ heading, fired, rows }) => (
        <section class="met">
          <h2>{heading}</h2>
          {fired && <p class="quiet">{fired}</p>}
          {rows.map(({ coats, cells }) => (
            <section class="met-row">
              <h3>{coats}</h3>
              <div class="met-cells">
                {cells.map((cell) => (
                  <Cell root={root} cell={cell} />
                ))}
              </div>
            </section>
          ))}
        </section>
      ))}
    </>
  );
}

function Cell({ root, cell }: { readonly root: string; readonly cell: PairCellView }): VNode {
  const { name, tiles, more, otherwise, none } = cell;
  return (
    <div class="met-cell">
      <h4>{name}</h4>
      {tiles.map((tile) => (
        <Tested root={root} tile={tile} />
      ))}
      {tiles.length === 0 && <p class="quiet">{none}</p>}
      {more.links.length > 0 && (
        <p class="quiet">
          Also <Codes root={root} of={more} />
        </p>
      )}
      {otherwise && otherwise.codes.links.length > 0 && (
        <p class="quiet">
          {otherwise.words} <Codes root={root} of={otherwise.codes} />
        </p>
      )}
    </div>
  );
}

/** A photograph, and beneath it how the glaze went on, what came out, and the maker's own line. */
export function Tested({
  root,
  tile,
}: {
  readonly root: string;
  readonly tile: TestedTile;
}): VNode {
  const { entry, how, came, line, nextTime } = tile;
  return (
    <div class="tested">
      <a href={root + entry.url}>
        {entry.picture ? (
          <SmallPhotograph root={root} picture={entry.picture} turn="late" />
        ) : (
          <NoPhotograph tile={entry} />
        )}
        <span class="code">{entry.id}</span>
      </a>
      <p class="how">{how}</p>
      <p class="came-of">{came}</p>
      {line && <p class="own-line">“{line}”</p>}
      {nextTime && <p class="how">Next time: {nextTime}</p>}
    </div>
  );
}

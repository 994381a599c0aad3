/** The square of a set: top glaze across, underneath down, photographs in the squares. */
import type { VNode } from "preact";
import type { Link } from "../../src/catalogue/link.ts";
import { count } from "../words/english/numbers.ts";
import { CardOutcome } from "./card-outcome.tsx";
import type { TileEntry } from "./entry.ts";

export interface SetSquareView {
  readonly tops: readonly Link[];
  readonly unders: readonly Link[];
  /** Down by across; null where nobody made one. */
  readonly rows: readonly (readonly (SquareTile | null)[])[];
  /** What it shows, and what is the same on all of it. */
  readonly words: string;
  /** So many glazes that there is no room for. */
  readonly more: number;
}

export interface SquareTile {
  readonly tile: TileEntry;
  /** So many more were made alike. */
  readonly more: number;
}

export function SetSquare(props: { readonly root: string; readonly square: SetSquareView }): VNode {
  const { root, square } = props;
  return (
    <section class="set-square">
      <h2>Over and under</h2>
      <p class="measure">{square.words}</p>
      <div class="square-scroll">
        <table>
          <thead>
            <tr>
              <td class="corner">
                <span>on top →</span>
                <span>underneath ↓</span>
              </td>
              {square.tops.map(({ name, url }) => (
                <th scope="col">
                  <a href={root + url}>{name}</a>
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {square.rows.map((row, i) => (
              <Row root={root} under={square.unders[i]} row={row} />
            ))}
          </tbody>
        </table>
      </div>
      {square.more > 0 && (
        <p class="quiet">
          {count(square.more, "more glaze")} not shown; all tiles of the set are on the wall below
          and its further pages.
        </p>
      )}
    </section>
  );
}

function Row(props: {
  readonly root: string;
  readonly under: Link | undefined;
  readonly row: SetSquareView["rows"][number];
}): VNode {
  const { root, under, row } = props;
  return (
    <tr>
      <th scope="row">{under && <a href={root + under.url}>{under.name}</a>}</th>
      {row.map((square) =>
        square ? (
          <td>
            <Made root={root} square={square} />
          </td>
        ) : (
          <td class="gap">
            <span class="unseen">none made</span>
          </td>
        ),
      )}
    </tr>
  );
}

/** Run and verdict are marked; the tile's page says the rest. */
function Made({ root, square }: { readonly root: string; readonly square: SquareTile }): VNode {
  const { tile, more } = square;
  const { run, again, fate } = tile.outcome;
  return (
    <a href={root + tile.url}>
      {tile.picture ? (
        <img src={root + tile.picture.plain} alt="" loading="lazy" decoding="async" />
      ) : (
        <span class="no-photograph">no photograph</span>
      )}
      <span class="code">
        {tile.id}
        {more > 0 && <small> +{more}</small>}
      </span>
      <CardOutcome of={{ surface: [], faults: [], run, again, fate }} />
    </a>
  );
}

/** A question of a set laid out: what differs across, the rest down, photographs in the squares. */
import type { VNode } from "preact";
import { count } from "../words/english/numbers.ts";
import { CardOutcome } from "./card-outcome.tsx";
import { Codes, type NamedCodes } from "./codes.tsx";
import type { TileEntry } from "./entry.ts";
import { SmallPhotograph } from "./photograph.tsx";
import { NoPhotograph } from "./wall.tsx";

export interface AskedTable {
  /** `how it cooled` */
  readonly question: string;
  readonly answer: string;
  readonly values: readonly string[];
  readonly moreValues: number;
  readonly rows: readonly { readonly name: string; readonly cells: readonly AskedCell[] }[];
  readonly moreRows: number;
}

export interface AskedCell {
  /** Null where nobody made one. */
  readonly tile: TileEntry | null;
  /** Tiles made alike. */
  readonly more: NamedCodes;
}

export function AskedTables(props: {
  readonly root: string;
  readonly tables: readonly AskedTable[];
}): VNode {
  return (
    <>
      {props.tables.map((table) => (
        <section class="question">
          <h2>What it asked: {table.question}</h2>
          <p class="measure">{table.answer}</p>
          <ol class="rows">
            {table.rows.map(({ name, cells }) => (
              <li>
                <h3>{name}</h3>
                <div class="cells">
                  {cells.map((cell, i) => (
                    <Square root={props.root} value={table.values[i] ?? ""} {...cell} />
                  ))}
                </div>
              </li>
            ))}
          </ol>
          <LeftOut table={table} />
        </section>
      ))}
    </>
  );
}

/** A tile that has one of the values: what it has, its photograph, what came of it, and its twins. */
export function Square(
  props: AskedCell & { readonly root: string; readonly value: string },
): VNode {
  const { root, value, tile, more } = props;
  return (
    <div class="cell">
      <p class="value">{value}</p>
      {tile ? (
        <a href={root + tile.url}>
          {tile.picture ? (
            <SmallPhotograph root={root} picture={tile.picture} turn="late" />
          ) : (
            <NoPhotograph tile={tile} />
          )}
          <span class="code">{tile.id}</span>
          <CardOutcome of={tile.outcome} />
        </a>
      ) : (
        <p class="quiet">none made</p>
      )}
      {more.links.length > 0 && (
        <p class="quiet">
          also <Codes root={root} of={more} />
        </p>
      )}
    </div>
  );
}

function LeftOut({
  table: { moreRows, moreValues },
}: {
  readonly table: AskedTable;
}): VNode | null {
  const told = [
    moreRows > 0 && count(moreRows, "more row"),
    moreValues > 0 && count(moreValues, "more column"),
  ].filter(Boolean);
  return told.length > 0 ? (
    <p class="quiet">
      {told.join(" and ")} not shown; all tiles of the set are on the wall below and its further
      pages.
    </p>
  ) : null;
}

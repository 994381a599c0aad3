/** Two glazes on each other: both orders and each alone, what the order did, and what they make together. */
import type { VNode } from "preact";
import type { CatalogueGlaze } from "../../src/catalogue/glazes.ts";
import type { Link } from "../../src/catalogue/link.ts";
import { mindingOfGlazes } from "../../src/catalogue/minding.ts";
import type { CataloguePair } from "../../src/catalogue/pairs.ts";
import { trailTo } from "../linked/trail.ts";
import { LoudHazards } from "../mixing/hazards.tsx";
import { MindingLines } from "../mixing/minding.tsx";
import { OverlapSection } from "../mixing/overlap.tsx";
import { Document } from "../parts/document.tsx";
import type { TileEntry } from "../parts/entry.ts";
import type { Frame } from "../parts/frame.ts";
import type { LeadPicture } from "../parts/lead-picture.ts";
import { PairTable, type PairTableView } from "../parts/pair-table.tsx";
import { Swaps, type SwapsView } from "../parts/swaps.tsx";
import type { Turn } from "../parts/turn.ts";
import { TurnPages } from "../parts/turn-pages.tsx";
import { Wall } from "../parts/wall.tsx";
import { count } from "../words/english/numbers.ts";
import { partWords } from "../words/english/turning.ts";
import { notAllKnown } from "../words/glaze/pair.ts";

export interface PairPageProps {
  readonly frame: Frame;
  readonly pair: Omit<CataloguePair, "tiles">;
  readonly sentence: string;
  readonly table: PairTableView;
  readonly swaps: SwapsView;
  /** Tiles of this page that the table has no room for. */
  readonly others: readonly TileEntry[];
  readonly turn: Turn;
  /** The same two the other way round: how many tiles. */
  readonly reversed: number;
  /** Why the melt of the two is not worked out; empty where it is. */
  readonly noMelt: string;
  /** The first photograph of its tiles. */
  readonly lead: LeadPicture | null;
  /** The two glazes themselves. */
  readonly glazes: { readonly over: GlazeInAPair; readonly under: GlazeInAPair };
}

export type GlazeInAPair = Pick<CatalogueGlaze, "chemistry" | "hazards" | "id" | "name" | "url">;

export function PairPage(props: PairPageProps): VNode {
  const { frame, pair, sentence, table, swaps, turn, glazes } = props;
  const { root } = frame;
  const title = `${pair.over.name} over ${pair.under.name}`;
  return (
    <Document
      styles="pair"
      frame={frame}
      title={title}
      summary={sentence}
      section="glazes"
      lead={props.lead}
      linked={[trailTo(frame, "glazes", title, pair.over)]}
      kind="entry pair"
    >
      <header class="opening">
        <h1>
          <GlazeLink root={root} glaze={pair.over} /> <i>over</i>{" "}
          <GlazeLink root={root} glaze={pair.under} />
        </h1>
        <p class="lede">{sentence}</p>
        <Ways {...props} />
      </header>
      {[glazes.over, glazes.under].map(({ name, hazards }) => (
        <LoudHazards root={root} hazards={hazards} of={name} />
      ))}
      <Swaps root={root} of={swaps} />
      <p class="quiet measure">
        Clays, cones, fires, shapes and numbers of coats are kept apart. A glaze alone is shown with
        as many coats, or as near to that as there is.
      </p>
      <PairTable root={root} table={table} />
      <NotShown {...props} />
      <TurnPages root={root} turn={turn} many="tiles" />
      <Minding {...props} />
      {pair.overlap ? (
        <OverlapSection overlap={pair.overlap} {...glazes} />
      ) : (
        <section>
          <h2>What the two make together</h2>
          <p class="measure">Not worked out. {props.noMelt}</p>
        </section>
      )}
      <p class="quiet measure">
        A label covers that glaze alone, not a combination. Have ware for food leach-tested by a
        laboratory: <a href={`${root}care.html#food`}>care</a>.
      </p>
    </Document>
  );
}

/** The pages of the same two the other way round, and of what runs. */
function Ways({ frame: { root }, pair, reversed }: PairPageProps): VNode {
  const name = `${pair.under.name} over ${pair.over.name}`;
  return (
    <p class="quiet">
      The other way round:{" "}
      {pair.reverse ? (
        <>
          <a href={root + pair.reverse}>{name}</a>, {count(reversed, "tile")}
        </>
      ) : (
        `${name}, none tested yet`
      )}
      . <a href={`${root}runs.html`}>What runs here</a>
    </p>
  );
}

function NotShown({ frame: { root }, table, others, turn }: PairPageProps): VNode {
  return (
    <>
      {others.length > 0 && (
        <section>
          <h2>More tiles with this pair</h2>
          <Wall root={root} tiles={others} />
        </section>
      )}
      {turn.shown < turn.total && (
        <p class="quiet">{partWords(turn.shown, turn.total)} are shown here; the rest follow.</p>
      )}
      {table.moreRows > 0 && (
        <p class="quiet">
          {count(table.moreRows, "more row")} of other coats, cones, clays and fires not shown.
        </p>
      )}
    </>
  );
}

function Minding({ frame: { root }, glazes: { over, under } }: PairPageProps): VNode {
  const known = [over, under].map(({ name, hazards }) => ({
    name,
    isKnown: hazards.every(({ code }) => code !== "not-known"),
  }));
  const words = notAllKnown(known);
  return (
    <>
      <MindingLines
        root={root}
        minding={mindingOfGlazes([over, under])}
        title="Take care when mixing and firing"
      />
      {words && <p class="measure">{words}</p>}
    </>
  );
}

function GlazeLink({ root, glaze }: { readonly root: string; readonly glaze: Link }): VNode {
  return <a href={root + glaze.url}>{glaze.name}</a>;
}

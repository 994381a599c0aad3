/** One glaze over another, and the reverse beside it. */
import type { VNode } from "preact";
import type { CatalogueGlaze } from "../../src/catalogue/glazes.ts";
import type { Link } from "../../src/catalogue/link.ts";
import { mindingOfGlazes } from "../../src/catalogue/minding.ts";
import type { CataloguePair } from "../../src/catalogue/pairs.ts";
import { LoudHazards } from "../mixing/hazards.tsx";
import { MindingLines } from "../mixing/minding.tsx";
import { OverlapSection } from "../mixing/overlap.tsx";
import { Document } from "../parts/document.tsx";
import type { TileEntry } from "../parts/entry.ts";
import type { Frame } from "../parts/frame.ts";
import { Wall } from "../parts/wall.tsx";
import { count } from "../words/english/numbers.ts";

export interface PairPageProps {
  readonly frame: Frame;
  readonly pair: CataloguePair;
  readonly tiles: readonly TileEntry[];
  /** The same two the other way round; empty where nobody tried. */
  readonly reverse: readonly TileEntry[];
  /** The two glazes themselves. */
  readonly glazes: { readonly over: CatalogueGlaze; readonly under: CatalogueGlaze };
}

export function PairPage({ frame, pair, tiles, reverse, glazes }: PairPageProps): VNode {
  const { over, under } = pair;
  const sentence = `${count(tiles.length, "tile")} with ${over.name} directly over ${under.name}.`;
  return (
    <Document
      frame={frame}
      title={`${over.name} over ${under.name}`}
      summary={sentence}
      section="glazes"
      kind="entry pair"
    >
      <header class="opening">
        <h1>
          <GlazeLink root={frame.root} glaze={over} /> <i>over</i>{" "}
          <GlazeLink root={frame.root} glaze={under} />
        </h1>
        <p class="lede">{sentence}</p>
      </header>
      {[glazes.over, glazes.under].map(({ name, hazards }) => (
        <LoudHazards root={frame.root} hazards={hazards} of={name} />
      ))}
      <Wall root={frame.root} tiles={tiles} first />
      <section>
        <h2>The other way round</h2>
        {reverse.length > 0 ? (
          <>
            <p class="measure">
              {pair.reverse ? (
                <a href={frame.root + pair.reverse}>
                  {under.name} over {over.name}
                </a>
              ) : (
                `${under.name} over ${over.name}`
              )}
              , for comparison.
            </p>
            <Wall root={frame.root} tiles={reverse} />
          </>
        ) : (
          <p class="empty">
            {under.name} over {over.name}: none tested yet.
          </p>
        )}
      </section>
      <MindingLines
        root={frame.root}
        minding={mindingOfGlazes([glazes.over, glazes.under])}
        title="Take care when mixing and firing"
      />
      {pair.overlap && <OverlapSection overlap={pair.overlap} {...glazes} />}
      <p class="quiet measure">
        A label covers that glaze alone, not a combination. Have ware for food leach-tested by a
        laboratory: <a href={`${frame.root}care.html#food`}>care</a>.
      </p>
    </Document>
  );
}

function GlazeLink({ root, glaze }: { readonly root: string; readonly glaze: Link }): VNode {
  return <a href={root + glaze.url}>{glaze.name}</a>;
}

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
import type { Turn } from "../parts/turn.ts";
import { PartLine, TurnPages } from "../parts/turn-pages.tsx";
import { Wall } from "../parts/wall.tsx";
import { partWords } from "../words/english/turning.ts";
import { type MorePageProps, TileGroups } from "./more-page.tsx";

export interface PairPageProps {
  readonly frame: Frame;
  readonly pair: Omit<CataloguePair, "tiles">;
  readonly sentence: string;
  /** The first of its tiles, and how the list goes on. */
  readonly groups: MorePageProps["groups"];
  readonly turn: Turn;
  /** The same two the other way round: how many tiles, and the first of them. */
  readonly reversed: { readonly tiles: number; readonly shown: readonly TileEntry[] };
  /** The two glazes themselves. */
  readonly glazes: { readonly over: GlazeInAPair; readonly under: GlazeInAPair };
}

export type GlazeInAPair = Pick<CatalogueGlaze, "chemistry" | "hazards" | "id" | "name" | "url">;

export function PairPage(props: PairPageProps): VNode {
  const { frame, pair, sentence, groups, turn, glazes } = props;
  const { over, under } = pair;
  return (
    <Document
      styles="pair"
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
      <PartLine root={frame.root} turn={turn} many="tiles" wall={null} />
      <TileGroups root={frame.root} groups={groups} first />
      <TurnPages root={frame.root} turn={turn} many="tiles" />
      <OtherWayRound {...props} />
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

function OtherWayRound({ frame: { root }, pair, reversed }: PairPageProps): VNode {
  const name = `${pair.under.name} over ${pair.over.name}`;
  const { tiles, shown } = reversed;
  const part = shown.length < tiles && `: ${partWords(shown.length, tiles)}`;
  return (
    <section>
      <h2>The other way round</h2>
      {shown.length > 0 ? (
        <>
          <p class="measure">
            {pair.reverse ? <a href={root + pair.reverse}>{name}</a> : name}, for comparison{part}.
          </p>
          <Wall root={root} tiles={shown} />
        </>
      ) : (
        <p class="empty">{name}: none tested yet.</p>
      )}
    </section>
  );
}

function GlazeLink({ root, glaze }: { readonly root: string; readonly glaze: Link }): VNode {
  return <a href={root + glaze.url}>{glaze.name}</a>;
}

/** A further page of a list of tiles that is too long for one: what they have in common, and they. */
import type { VNode } from "preact";
import type { Caution } from "../../src/chemistry/cautions/cautions.ts";
import { LoudHazards } from "../mixing/hazards.tsx";
import { Document } from "../parts/document.tsx";
import type { TileEntry } from "../parts/entry.ts";
import type { Frame } from "../parts/frame.ts";
import type { Section } from "../parts/sections.ts";
import type { Turn } from "../parts/turn.ts";
import { PartLine, TurnPages } from "../parts/turn-pages.tsx";
import { Wall } from "../parts/wall.tsx";
import { pageTitle } from "../words/english/turning.ts";

export interface MorePageProps {
  readonly frame: Frame;
  readonly title: string;
  /** Of all tiles of the list. */
  readonly sentence: string;
  readonly section?: Section | undefined;
  /** What may never be left out, of each glaze that the list is about. */
  readonly loud?: readonly { readonly name: string; readonly hazards: readonly Caution[] }[];
  readonly groups: readonly {
    readonly title: string;
    readonly items: readonly TileEntry[];
    /** What is to be known of them. */
    readonly note?: string;
  }[];
  readonly turn: Turn;
  /** The same choice on the wall, as the part of its address after `?`; null where it has none. */
  readonly wall: string | null;
}

export function MorePage(props: MorePageProps): VNode {
  const { frame, title, sentence, section, loud = [], groups, turn, wall } = props;
  const { root } = frame;
  return (
    <Document
      styles="more"
      frame={frame}
      title={pageTitle(title, turn.here, turn.pages)}
      summary={sentence}
      section={section}
      kind="entry"
    >
      <header class="opening">
        <h1>
          <a href={root + turn.url}>{title}</a>
          {pageTitle("", turn.here, turn.pages)}
        </h1>
        <p class="lede">{sentence}</p>
      </header>
      {loud.map(({ name, hazards }) => (
        <LoudHazards root={root} hazards={hazards} of={name} />
      ))}
      <PartLine root={root} turn={turn} many="tiles" wall={wall} />
      <TileGroups root={root} groups={groups} first />
      <TurnPages root={root} turn={turn} many="tiles" />
    </Document>
  );
}

/** Tiles under their headings. */
export function TileGroups(props: {
  readonly root: string;
  readonly groups: MorePageProps["groups"];
  readonly first?: boolean;
}): VNode {
  const { root, groups, first = false } = props;
  return (
    <>
      {groups.map(({ title, items, note }, i) => (
        <section>
          {title && <h2>{title}</h2>}
          <Wall root={root} tiles={items} first={first && i === 0} />
          {note && <p class="measure quiet">{note}</p>}
        </section>
      ))}
    </>
  );
}

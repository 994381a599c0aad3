/** A page of tiles that have something in common: a clay, a maker, a surface, two glazes. */
import type { VNode } from "preact";
import { type Definition, Definitions } from "../parts/definitions.tsx";
import { Document } from "../parts/document.tsx";
import type { Frame } from "../parts/frame.ts";
import { Gaps } from "../parts/gaps.tsx";
import type { LeadPicture } from "../parts/lead-picture.ts";
import { Quotation } from "../parts/notes.tsx";
import { RecordFoot, type RecordFootProps } from "../parts/record-foot.tsx";
import type { Section } from "../parts/sections.ts";
import type { Turn } from "../parts/turn.ts";
import { PartLine, TurnPages } from "../parts/turn-pages.tsx";
import type { GapWords } from "../words/clay/clay.ts";
import { type MorePageProps, TileGroups } from "./more-page.tsx";

export interface TilesPageProps {
  readonly frame: Frame;
  /** Null where the page says nothing of its file. */
  readonly foot: RecordFootProps | null;
  readonly title: string;
  readonly sentence: string;
  readonly section?: Section | undefined;
  readonly facts?: readonly Definition[];
  readonly notes?: string;
  /** Cones at which there is none yet. */
  readonly gaps?: readonly GapWords[];
  /** The first tiles of them, and how the list goes on. */
  readonly groups: MorePageProps["groups"];
  readonly turn: Turn;
  /** The first photograph of them. */
  readonly lead: LeadPicture | null;
  readonly wall: string | null;
  /** What would fill the page, where it is empty. */
  readonly empty: string;
}

export function TilesPage(props: TilesPageProps): VNode {
  const {
    frame,
    title,
    sentence,
    section,
    facts = [],
    notes = "",
    gaps = [],
    groups,
    turn,
    lead,
    empty,
  } = props;
  return (
    <Document
      styles="tiles"
      frame={frame}
      title={title}
      summary={sentence}
      section={section}
      lead={lead}
      kind="entry"
    >
      <header class="opening">
        <h1>{title}</h1>
        <p class="lede">{sentence}</p>
      </header>
      <Definitions of={facts} />
      <Gaps root={frame.root} gaps={gaps} />
      <Quotation notes={notes} />
      {turn.total === 0 && <p class="empty">{empty}</p>}
      <PartLine root={frame.root} turn={turn} many="tiles" wall={props.wall} />
      <TileGroups root={frame.root} groups={groups} first />
      <TurnPages root={frame.root} turn={turn} many="tiles" />
      <RecordFoot of={props.foot} />
    </Document>
  );
}

/** A page of tiles that have something in common: a clay, a maker, a surface, two glazes. */
import type { ComponentChildren, VNode } from "preact";
import { type Definition, Definitions } from "../parts/definitions.tsx";
import { Document } from "../parts/document.tsx";
import type { TileEntry } from "../parts/entry.ts";
import type { Frame, Section } from "../parts/frame.ts";
import { Quotation } from "../parts/notes.tsx";
import { Wall } from "../parts/wall.tsx";

export interface TilesPageProps {
  readonly frame: Frame;
  readonly title: string;
  readonly sentence: string;
  readonly section?: Section | undefined;
  readonly facts?: readonly Definition[];
  readonly notes?: string;
  readonly groups: readonly { readonly title: string; readonly tiles: readonly TileEntry[] }[];
  /** What would fill the page, where it is empty. */
  readonly empty: string;
  /** Where else to go, and what to take care of. */
  readonly children?: ComponentChildren;
}

export function TilesPage(props: TilesPageProps): VNode {
  const { frame, title, sentence, section, facts = [], notes = "", groups, empty } = props;
  const filled = groups.filter((group) => group.tiles.length > 0);
  return (
    <Document frame={frame} title={title} summary={sentence} section={section} kind="entry">
      <header class="opening">
        <h1>{title}</h1>
        <p class="lede">{sentence}</p>
      </header>
      <Definitions of={facts} />
      <Quotation notes={notes} />
      {props.children}
      {filled.length === 0 && <p class="empty">{empty}</p>}
      {filled.map((group, i) => (
        <section>
          {group.title && <h2>{group.title}</h2>}
          <Wall root={frame.root} tiles={group.tiles} first={i === 0} />
        </section>
      ))}
    </Document>
  );
}

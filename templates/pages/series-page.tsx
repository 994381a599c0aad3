/** All strips of a glaze, where they are more than its own page shows. */
import type { VNode } from "preact";
import type { Caution } from "../../src/chemistry/cautions/cautions.ts";
import { LoudHazards } from "../mixing/hazards.tsx";
import { Document } from "../parts/document.tsx";
import type { Frame } from "../parts/frame.ts";
import { type StripEntry, StripOf } from "../parts/strip.tsx";
import type { Turn } from "../parts/turn.ts";
import { TurnPages } from "../parts/turn-pages.tsx";
import { pageTitle } from "../words/english/turning.ts";

export interface SeriesPageProps {
  readonly frame: Frame;
  readonly glaze: { readonly name: string; readonly url: string };
  readonly hazards: readonly Caution[];
  readonly groups: readonly { readonly title: string; readonly items: readonly StripEntry[] }[];
  readonly turn: Turn;
}

export function SeriesPage(props: SeriesPageProps): VNode {
  const { frame, glaze, groups, turn } = props;
  const sentence = `Tiles with ${glaze.name} that differ in one thing alone.`;
  const title = pageTitle(`${glaze.name}: one thing changed at a time`, turn.here, turn.pages);
  return (
    <Document
      styles="series"
      frame={frame}
      title={title}
      summary={sentence}
      section="glazes"
      kind="entry"
    >
      <header class="opening">
        <h1>
          <a href={frame.root + glaze.url}>{glaze.name}</a>
          {title.slice(glaze.name.length)}
        </h1>
        <p class="lede">{sentence}</p>
      </header>
      <LoudHazards root={frame.root} hazards={props.hazards} of={glaze.name} />
      {groups.map(({ title: heading, items }) => (
        <section class="strips">
          <h2>{heading}</h2>
          {items.map((strip) => (
            <StripOf root={frame.root} strip={strip} />
          ))}
        </section>
      ))}
      <TurnPages root={frame.root} turn={turn} many="series" />
    </Document>
  );
}

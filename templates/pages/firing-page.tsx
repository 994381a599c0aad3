/** A firing: the aim, what the cones said, the programme, and what stood on each shelf. */
import type { VNode } from "preact";
import type { CatalogueFiring } from "../../src/catalogue/types.ts";
import { Definitions } from "../parts/definitions.tsx";
import { Document } from "../parts/document.tsx";
import type { TileEntry } from "../parts/entry.ts";
import type { Frame } from "../parts/frame.ts";
import { Quotation } from "../parts/notes.tsx";
import { Wall } from "../parts/wall.tsx";
import { loadSentence, segmentWords, witnessWords } from "../words/firing.ts";
import { capital } from "../words/numbers.ts";
import { shelfWords } from "../words/steps.ts";

export interface FiringPageProps {
  readonly frame: Frame;
  readonly firing: CatalogueFiring;
  readonly notesHtml: string;
  readonly shelves: readonly {
    readonly shelf: string | null;
    readonly tiles: readonly TileEntry[];
  }[];
}

export function FiringPage({ frame, firing, notesHtml, shelves }: FiringPageProps): VNode {
  const sentence = loadSentence(firing.record);
  return (
    <Document
      frame={frame}
      title={`Firing ${firing.id}`}
      summary={sentence}
      section="firings"
      kind="entry"
    >
      <header class="opening">
        <p class="code plate-number">{firing.id}</p>
        <h1>{sentence}</h1>
      </header>
      <div class="columns">
        <div>
          <Witnesses firing={firing} />
          <Quotation html={notesHtml} />
        </div>
        <Programme firing={firing} />
      </div>
      {shelves.length === 0 && <p class="empty">No tile of this catalogue was in it.</p>}
      {shelves.map(({ shelf, tiles }) => (
        <section>
          <h2>{shelf === null ? "Shelf not written down" : capital(shelfWords(shelf))}</h2>
          <Wall root={frame.root} tiles={tiles} />
        </section>
      ))}
    </Document>
  );
}

function Witnesses({ firing: { record } }: { readonly firing: CatalogueFiring }): VNode {
  const shelves = Object.entries(record.witness ?? {});
  return (
    <section>
      <h2>What the cones said</h2>
      {shelves.length === 0 && <p>No witness cone was read.</p>}
      <Definitions
        of={shelves.map(([shelf, witness]) => [
          capital(shelfWords(shelf)),
          <span class="code">{witnessWords(witness)}</span>,
        ])}
      />
    </section>
  );
}

function Programme({ firing: { record } }: { readonly firing: CatalogueFiring }): VNode {
  const { schedule, unit = "C" } = record;
  return (
    <section>
      <h2>The programme</h2>
      {schedule ? (
        <ol class="steps">
          {schedule.map((segment) => (
            <li>{segmentWords(segment, unit)}.</li>
          ))}
        </ol>
      ) : (
        <p>It was not written down.</p>
      )}
      <p class="quiet">
        A programme fits the kiln that it was written for. Cones, not the display, say what the
        glaze had.
      </p>
    </section>
  );
}

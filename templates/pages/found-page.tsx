/** All that a set found out, where its own page shows only the first of it. */
import type { VNode } from "preact";
import { Document } from "../parts/document.tsx";
import { type LessonList, Lessons } from "../parts/found-out.tsx";
import type { Frame } from "../parts/frame.ts";
import type { Turn } from "../parts/turn.ts";
import { TurnPages } from "../parts/turn-pages.tsx";
import { pageTitle } from "../words/english/turning.ts";

export interface FoundPageProps {
  readonly frame: Frame;
  readonly title: string;
  readonly sentence: string;
  readonly set: { readonly name: string; readonly url: string };
  readonly lessons: readonly LessonList[];
  readonly turn: Turn;
}

export function FoundPage({ frame, title, sentence, set, lessons, turn }: FoundPageProps): VNode {
  return (
    <Document
      styles="found"
      frame={frame}
      title={pageTitle(title, turn.here, turn.pages)}
      summary={sentence}
      section="sets"
      kind="entry"
      scripts={["assets/printing.js"]}
    >
      <header class="opening">
        <h1>{pageTitle(title, turn.here, turn.pages)}</h1>
        <p class="lede">{sentence}</p>
        <p class="quiet">
          The whole set: <a href={frame.root + set.url}>{set.name}</a>.
        </p>
        <p class="print-place" data-print="Print this page" />
      </header>
      <Lessons root={frame.root} lessons={lessons} />
      <TurnPages root={frame.root} turn={turn} many="lines" />
    </Document>
  );
}

/** The records that this site was published without, each with what has to be mended. */
import type { VNode } from "preact";
import { Document } from "../parts/document.tsx";
import type { Frame } from "../parts/frame.ts";
import type { Turn } from "../parts/turn.ts";
import { TurnPages } from "../parts/turn-pages.tsx";
import { pageTitle } from "../words/english/turning.ts";
import type { WaitingRecord } from "../words/site/waiting.ts";
import { hiddenFault, nameWaiting, reasonToWait, waitingSentence } from "../words/site/waiting.ts";

export interface WaitingPageProps {
  readonly frame: Frame;
  /** The records of this page of the list. */
  readonly groups: readonly { readonly title: string; readonly items: readonly WaitingRecord[] }[];
  readonly turn: Turn;
}

export function WaitingPage({ frame, groups, turn }: WaitingPageProps): VNode {
  const them = turn.total === 1 ? "it" : "them";
  return (
    <Document
      styles="waiting"
      frame={frame}
      title={pageTitle("Waiting to be mended", turn.here, turn.pages)}
      summary={`${waitingSentence(turn.total)} No page shows ${them} until then.`}
      kind="entry waiting"
    >
      <header class="opening">
        <h1>{waitingSentence(turn.total)}</h1>
        <p class="lede">
          Until then no page of this catalogue shows {them}, and no list, no count and no sentence
          here rests on {them}.
        </p>
      </header>
      {groups.map(({ title, items }) => (
        <WaitingList title={title} records={items} />
      ))}
      <TurnPages root={frame.root} turn={turn} many="records" />
    </Document>
  );
}

function WaitingList(props: {
  readonly title: string;
  readonly records: readonly WaitingRecord[];
}): VNode {
  return (
    <section>
      <h2>{props.title}</h2>
      <ul class="waiting-list">
        {props.records.map((record) => (
          <Waiting record={record} />
        ))}
      </ul>
    </section>
  );
}

function Waiting({ record }: { readonly record: WaitingRecord }): VNode {
  const { file, faults, because } = record;
  return (
    <li>
      <h3>{nameWaiting(record)}</h3>
      <p class="code">{file}</p>
      {faults.map(({ line, message }) => (
        <p>
          Line {line}: {message ?? hiddenFault}
        </p>
      ))}
      {because && <p>{reasonToWait(record, because)}</p>}
    </li>
  );
}

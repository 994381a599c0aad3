/** The records that this site was published without, each with what has to be mended. */
import type { VNode } from "preact";
import { Document } from "../parts/document.tsx";
import type { Frame } from "../parts/frame.ts";
import type { WaitingRecord } from "../words/site/waiting.ts";
import { hiddenFault, nameWaiting, reasonToWait, waitingSentence } from "../words/site/waiting.ts";

export interface WaitingPageProps {
  readonly frame: Frame;
  readonly waiting: readonly WaitingRecord[];
}

export function WaitingPage({ frame, waiting }: WaitingPageProps): VNode {
  const them = waiting.length === 1 ? "it" : "them";
  const faulty = waiting.filter(({ faults }) => faults.length > 0);
  const resting = waiting.filter(({ faults }) => faults.length === 0);
  return (
    <Document
      frame={frame}
      title="Waiting to be mended"
      summary={`${waitingSentence(waiting.length)} No page shows ${them} until then.`}
      kind="entry waiting"
    >
      <header class="opening">
        <h1>{waitingSentence(waiting.length)}</h1>
        <p class="lede">
          Until then no page of this catalogue shows {them}, and no list, no count and no sentence
          here rests on {them}.
        </p>
      </header>
      <WaitingList title="Mend these" records={faulty} />
      <WaitingList title="These come back by themselves" records={resting} />
    </Document>
  );
}

function WaitingList(props: {
  readonly title: string;
  readonly records: readonly WaitingRecord[];
}): VNode | null {
  if (props.records.length === 0) return null;
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

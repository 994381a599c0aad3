/** A page that leads on from an old code to the tile that has a new one. */
import type { VNode } from "preact";
import type { Link } from "../../src/catalogue/link.ts";
import { Document } from "../parts/document.tsx";
import type { Frame } from "../parts/frame.ts";

export function MovedPage(props: {
  readonly frame: Frame;
  readonly from: string;
  readonly to: Link;
}): VNode {
  const { frame, from, to } = props;
  const sentence = `The tile that was ${from} is now ${to.id}.`;
  return (
    <Document
      styles="moved"
      frame={frame}
      title={`${from} is now ${to.id}`}
      summary={sentence}
      kind="entry"
      leadsTo={frame.root + to.url}
    >
      <header class="opening">
        <p class="code plate-number">{from}</p>
        <h1>
          Now <a href={frame.root + to.url}>{to.id}</a>
        </h1>
        <p class="lede">{sentence}</p>
      </header>
    </Document>
  );
}

/** A page in the studio's own words. */
import type { VNode } from "preact";
import type { StudioPage } from "../../src/catalogue/own.ts";
import { Document } from "../parts/document.tsx";
import type { Frame } from "../parts/frame.ts";
import { renderOwnWords } from "../parts/own-words.ts";

export interface OwnPageProps {
  readonly frame: Frame;
  readonly page: StudioPage;
}

export function OwnPage({ frame, page: { title, words } }: OwnPageProps): VNode {
  return (
    <Document
      styles="own"
      frame={frame}
      title={title}
      summary={`${title}, a page by ${frame.studio}.`}
      kind="entry"
    >
      <header class="opening">
        <h1>{title}</h1>
      </header>
      <div class="own-words" dangerouslySetInnerHTML={{ __html: renderOwnWords(words, frame) }} />
    </Document>
  );
}

/** Up to four tiles, or four glazes, side by side: drawn by its script from what was chosen. */
import type { VNode } from "preact";
import { Document } from "../parts/document.tsx";
import type { Frame } from "../parts/frame.ts";
import type { BesideScale } from "../words/site/beside.ts";
import { besideLede, besideWithoutScripts } from "../words/site/beside.ts";

export interface BesidePageProps {
  readonly frame: Frame;
  /** What its script has to know of the site. */
  readonly index: BesideScale;
}

export function BesidePage({ frame, index }: BesidePageProps): VNode {
  return (
    <Document
      styles="beside"
      frame={frame}
      title="Side by side"
      summary={besideLede}
      kind="entry beside-page"
      scripts={["assets/beside.js"]}
    >
      <header class="opening">
        <h1>Side by side</h1>
        <p class="lede">{besideLede}</p>
      </header>
      <noscript>
        <p class="measure">
          {besideWithoutScripts} <a href={`${frame.root}index.html`}>All tiles</a>
        </p>
      </noscript>
      <div id="beside" data-root={frame.root} data-index={JSON.stringify(index)}>
        <form class="add-beside">
          <label>
            <span>Code</span> <input type="text" name="code" autocomplete="off" />
          </label>{" "}
          <button type="submit">Set beside</button>
        </form>
        <p class="told" role="status" />
        <div class="beside-columns" />
      </div>
    </Document>
  );
}

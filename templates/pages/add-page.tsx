/** The form on which a maker writes a tile down, drawn by its script; without one it says what to do instead. */
import type { VNode } from "preact";
import { Document } from "../parts/document.tsx";
import type { Frame } from "../parts/frame.ts";
import { formLede, formTitle, orByHand, withoutScript } from "../words/add/form.ts";

export interface AddPageProps {
  readonly frame: Frame;
  /** Sheets of notes to print, those of the newest sets. */
  readonly sheets: readonly { readonly name: string; readonly url: string }[];
}

export function AddPage({ frame, sheets }: AddPageProps): VNode {
  const { root } = frame;
  return (
    <Document
      styles="add"
      frame={frame}
      title={formTitle}
      summary={formLede}
      kind="entry add-page"
      scripts={["data/add.js", "assets/add.js"]}
    >
      <header class="opening">
        <h1>{formTitle}</h1>
      </header>
      <div id="add" data-root={root}>
        <p class="lede">{formLede}</p>
        <noscript>
          <p class="measure">{withoutScript}</p>
          <ul class="form-sheets">
            {sheets.map(({ name, url }) => (
              <li>
                <a href={root + url}>{name}</a>
              </li>
            ))}
          </ul>
          <p class="measure">
            {orByHand} <a href={`${root}reference.html`}>how to write a record</a>.
          </p>
        </noscript>
      </div>
    </Document>
  );
}

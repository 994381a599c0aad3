/**
 * The page for an address that leads nowhere. A host shows it at any depth, where links that are
 * relative to this page would lead astray: its frame names the whole path of the site's root.
 */
import type { VNode } from "preact";
import { Document } from "../parts/document.tsx";
import type { Frame } from "../parts/frame.ts";

export function NotFoundPage({ frame }: { readonly frame: Frame }): VNode {
  return (
    <Document
      frame={frame}
      title="No such page"
      summary="This address leads to nothing in the catalogue."
      kind="entry"
    >
      <header class="opening">
        <h1>This shelf is empty</h1>
        <p class="lede">
          The address leads to no page of this catalogue. A tile’s address never changes, so the
          code on its back will find it: look it up among{" "}
          <a href={`${frame.root}index.html`}>all tiles</a>.
        </p>
      </header>
    </Document>
  );
}

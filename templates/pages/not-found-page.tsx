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
      styles="not-found"
      frame={frame}
      title="No such page"
      summary="There is no page at this address."
      kind="entry"
    >
      <header class="opening">
        <h1>This shelf is empty</h1>
        <p class="lede">
          There is no page at this address. A tile’s address never changes, so find it by the code
          on its back among <a href={`${frame.root}index.html`}>all tiles</a>.
        </p>
      </header>
    </Document>
  );
}

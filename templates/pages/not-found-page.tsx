/**
 * The page for an address that leads nowhere. A host shows it at any depth, where links that are
 * relative to this page lead astray: so it says in words how to begin again.
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
        <h1>Nothing stands on this shelf</h1>
        <p class="lede">
          The address leads to no page of this catalogue. A tile’s address never changes, so the
          code on its back will find it: look it up among{" "}
          <a href={`${frame.root}index.html`}>all tiles</a>.
        </p>
        <p>Or cut the address in your browser back to where the catalogue begins.</p>
      </header>
    </Document>
  );
}

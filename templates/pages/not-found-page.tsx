/**
 * The page for an address that leads nowhere. A host shows it at any depth, where links that are
 * relative to this page lead astray: the studio's whole address stands beside them.
 */
import type { VNode } from "preact";
import { Document } from "../parts/document.tsx";
import type { Frame } from "../parts/frame.ts";

export interface NotFoundPageProps {
  readonly frame: Frame;
  /** Where the catalogue begins on the web, if the studio says so. */
  readonly address: string | null;
}

export function NotFoundPage({ frame, address }: NotFoundPageProps): VNode {
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
        {address !== null && (
          <p>
            The catalogue begins at <a href={address}>{address}</a>.
          </p>
        )}
      </header>
    </Document>
  );
}

/**
 * The line at the head of every page that `serve` shows, which leads to the desk. It is put into the
 * page on its way to the browser; the file of the site does not hold it.
 */
import type { VNode } from "preact";

export function WayToDesk({ address }: { readonly address: string }): VNode {
  return (
    <aside class="way-to-desk" aria-label="No part of the site">
      <a href={address}>To the desk</a>
      <span>This line is no part of the site: it is not published.</span>
    </aside>
  );
}

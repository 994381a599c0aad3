/**
 * The strip along the lower edge of every page that `serve` shows while the records have faults. It
 * is put into the page on its way to the browser; the file of the site does not hold it.
 */
import type { VNode } from "preact";
import type { Trouble } from "./trouble.ts";
import { TroubleList, troubleHeading } from "./trouble-list.tsx";

export function TroubleStrip({ trouble }: { readonly trouble: Trouble }): VNode {
  return (
    <aside class="trouble-strip" aria-label="What keeps the site from being built">
      <details open>
        <summary>
          <strong>{troubleHeading(trouble)}</strong>{" "}
          {trouble.kind === "unwritten"
            ? "This page shows the records as they are now. The folder of the site still holds the last one."
            : "This page is from before."}
        </summary>
        <div class="trouble-list">
          <TroubleList trouble={trouble} />
          <p>It is built again when you save, and this goes when all is mended.</p>
        </div>
      </details>
    </aside>
  );
}

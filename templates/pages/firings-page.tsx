/** Every firing, the newest first, and the kilns that they were in. */
import type { VNode } from "preact";
import type { CatalogueFiring } from "../../src/catalogue/kilns/firings.ts";
import type { CatalogueKiln } from "../../src/catalogue/kilns/kilns.ts";
import { Document } from "../parts/document.tsx";
import { FiringLines } from "../parts/firing-lines.tsx";
import type { Frame } from "../parts/frame.ts";

export interface FiringsPageProps {
  readonly frame: Frame;
  readonly firings: readonly CatalogueFiring[];
  readonly kilns: readonly CatalogueKiln[];
}

const sentence =
  "Every kiln load, the newest first: its curve, what was aimed at, what the cones said, and whether the two agree.";

export function FiringsPage({ frame, firings, kilns }: FiringsPageProps): VNode {
  return (
    <Document frame={frame} title="Firings" summary={sentence} section="firings" kind="entry">
      <header class="opening">
        <h1>Firings</h1>
        <p class="lede">
          {firings.length > 0
            ? sentence
            : "No firings yet. Add a record in tiles/firings/ and it shows here."}
        </p>
        {kilns.length > 0 && (
          <nav class="way-line" aria-label="By kiln">
            <h2>Kilns</h2>
            <ul>
              {kilns.map((kiln) => (
                <li>
                  <a href={frame.root + kiln.url}>
                    {kiln.name} <small>{kiln.firings.length}</small>
                  </a>
                </li>
              ))}
            </ul>
          </nav>
        )}
      </header>
      {firings.length > 0 && <FiringLines root={frame.root} firings={firings} withKiln />}
    </Document>
  );
}

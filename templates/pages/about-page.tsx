/** What this catalogue is, how to hand a tile in, what it publishes of people. */
import type { VNode } from "preact";
import type { CatalogueStudio } from "../../src/catalogue/studio.ts";
import { Document } from "../parts/document.tsx";
import type { Frame } from "../parts/frame.ts";
import { count } from "../words/english/numbers.ts";

export interface AboutPageProps {
  readonly frame: Frame;
  readonly studio: CatalogueStudio;
  readonly tiles: number;
  readonly glazes: number;
}

export function AboutPage({ frame, studio, tiles, glazes }: AboutPageProps): VNode {
  const sentence = `The glaze tests of ${studio.name}: ${count(tiles, "tile")} and ${count(glazes, "glaze")}, so that what was on a tile is known and can be had again.`;
  return (
    <Document frame={frame} title="About" summary={sentence} section="about" kind="entry">
      <header class="opening">
        <h1>About this catalogue</h1>
        <p class="lede">{sentence}</p>
      </header>
      <div class="topics">
        {studio.handingIn && (
          <section>
            <h2>Handing in a tile</h2>
            <p>{studio.handingIn}</p>
          </section>
        )}
        <HowToRead root={frame.root} />
        <WhatIsShown studio={studio} root={frame.root} />
      </div>
    </Document>
  );
}

function HowToRead({ root }: { readonly root: string }): VNode {
  return (
    <section>
      <h2>How to read a tile</h2>
      <p>
        Beside each code stands a drawing: a section through the tile. The clay lies at the bottom,
        with its texture as its upper edge. Each band above it is a layer of glaze in the order it
        went on, as high as it had coats, in the colour which that glaze measured by itself, or
        hatched where nobody has measured it. A band’s upper edge tells how it was put on, a short
        band that it covered only a part, a gap that something was kept off or taken off. A line
        across is a firing.
      </p>
      <p>
        Everything was written down by whoever made the tile; every field is explained in{" "}
        <a href={`${root}reference.html`}>how to write a record</a>.
      </p>
    </section>
  );
}

function WhatIsShown({
  studio,
  root,
}: {
  readonly studio: CatalogueStudio;
  readonly root: string;
}): VNode {
  return (
    <section>
      <h2>What it says, and what it does not</h2>
      <p>
        It reports tests. It certifies nothing, least of all for food:{" "}
        <a href={`${root}care.html`}>care</a>. Makers’ names stand here only as far as they asked
        for it, and photographs carry no place and no device.
      </p>
      {studio.licence && <p>{studio.licence}</p>}
      {studio.repository && (
        <p>
          The records themselves: <a href={studio.repository}>{studio.repository}</a>
        </p>
      )}
    </section>
  );
}

/** What this catalogue is, how to hand a tile in, what it publishes of people. */
import type { VNode } from "preact";
import type { CatalogueStudio } from "../../src/catalogue/studio.ts";
import { Document } from "../parts/document.tsx";
import type { Frame } from "../parts/frame.ts";
import { LicenceLine } from "../parts/licence.tsx";
import { count } from "../words/english/numbers.ts";

export interface AboutPageProps {
  readonly frame: Frame;
  readonly studio: CatalogueStudio;
  readonly tiles: number;
  readonly glazes: number;
}

export function AboutPage({ frame, studio, tiles, glazes }: AboutPageProps): VNode {
  const sentence = `The glaze tests of ${studio.name}: ${count(tiles, "tile")} and ${count(glazes, "glaze")}, so you can see what was on a tile and repeat it.`;
  return (
    <Document styles="about" frame={frame} title="About" summary={sentence} kind="entry">
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
        <WhatIsShown studio={studio} frame={frame} />
      </div>
    </Document>
  );
}

function HowToRead({ root }: { readonly root: string }): VNode {
  return (
    <section>
      <h2>How to read a tile</h2>
      <p>
        Beside each code is a drawing: a slice through the tile. The clay is at the bottom, and its
        upper edge shows the texture. Each band above is a layer of glaze, in the order they went
        on: the more coats, the taller the band. It has the colour that the glaze measured by
        itself, or is hatched where that is not known. The upper edge of a band shows how the glaze
        was put on. A short band covered only part of the tile; a gap is where something was kept
        off or taken off. A line across is a firing.
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
  frame,
}: {
  readonly studio: CatalogueStudio;
  readonly frame: Frame;
}): VNode {
  return (
    <section>
      <h2>What it says, and what it does not</h2>
      <p>
        It reports tests. It certifies nothing, least of all for food:{" "}
        <a href={`${frame.root}care.html`}>care</a>. Makers are named only as they asked to be, and
        photographs carry no place and no device.
      </p>
      <LicenceLine {...frame} />
      {studio.repository && (
        <p>
          The records themselves: <a href={studio.repository}>{studio.repository}</a>
        </p>
      )}
    </section>
  );
}

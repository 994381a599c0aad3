/** A kiln: its firings over time, witness cones against aims, shelves compared, control tiles. */
import type { VNode } from "preact";
import type { CatalogueFiring } from "../../src/catalogue/kilns/firings.ts";
import type { CatalogueKiln } from "../../src/catalogue/kilns/kilns.ts";
import { KilnChart } from "../charts/kiln-chart.tsx";
import { type ControlWithTwins, Twins } from "../parts/control-twins.tsx";
import { Document } from "../parts/document.tsx";
import { FiringLines } from "../parts/firing-lines.tsx";
import type { Frame } from "../parts/frame.ts";
import { KilnCare, RakuCare } from "../parts/kiln-care.tsx";
import {
  kilnSentence,
  offWords,
  rangeWords,
  shelfTitle,
  tiltSentence,
} from "../words/firing/kiln.ts";
import { twinsSummary } from "../words/tile/control.ts";

export interface KilnPageProps {
  readonly frame: Frame;
  readonly kiln: CatalogueKiln;
  /** Its firings, newest first. */
  readonly firings: readonly CatalogueFiring[];
  /** The control tiles, each with its twins in this kiln. */
  readonly controls: readonly ControlWithTwins[];
}

export function KilnPage(props: KilnPageProps): VNode {
  const { frame, kiln, firings, controls } = props;
  const sentence = kilnSentence(kiln);
  return (
    <Document
      frame={frame}
      title={kiln.name}
      summary={sentence}
      section="firings"
      kind="entry kiln"
    >
      <header class="opening">
        <h1>{kiln.name}</h1>
        <p class="lede">{sentence}</p>
      </header>
      <RakuCare kinds={firings.map(({ kind }) => kind)} />
      <OverTime kiln={kiln} />
      <ShelvesCompared kiln={kiln} />
      {controls.map(({ control, twins, unknown, trust }) => (
        <section class="control">
          <h2>
            The control tile in this kiln: {control.names || "no glaze"}, as{" "}
            <a class="code" href={frame.root + control.url}>
              {control.id}
            </a>
          </h2>
          <p class="measure">
            {twinsSummary(
              twins.map(({ twin }) => twin),
              control.id,
            )}
          </p>
          <Twins
            root={frame.root}
            control={control.id}
            twins={twins}
            unknown={unknown}
            trust={trust}
            withKiln={false}
          />
        </section>
      ))}
      <section>
        <h2>Its firings, the newest first</h2>
        <FiringLines root={frame.root} firings={firings} withKiln={false} />
      </section>
      <KilnCare
        root={frame.root}
        heatedBy={kiln.heatedBy}
        kinds={firings.map(({ kind }) => kind)}
      />
    </Document>
  );
}

function OverTime({ kiln }: { readonly kiln: CatalogueKiln }): VNode | null {
  const against = kiln.firings.filter(({ aim }) => aim !== null);
  if (against.length === 0) return null;
  return (
    <figure class="kiln-figure">
      <h2>Cones hotter or cooler than the aim, firing by firing</h2>
      <KilnChart firings={kiln.firings} />
      <figcaption>
        The grey band is a cone either side of the aim. Triangles that point up are witness cones of
        the top shelf, those that point down of the bottom, squares of any other; a line ties the
        shelves of one firing. The ring left of them is what its log, or its programme, works out
        at.
      </figcaption>
    </figure>
  );
}

function ShelvesCompared({ kiln }: { readonly kiln: CatalogueKiln }): VNode | null {
  if (kiln.shelves.length === 0) return null;
  const tilt = tiltSentence(kiln);
  return (
    <section class="shelves-compared">
      <h2>Its shelves</h2>
      {tilt && <p class="measure">{tilt}</p>}
      <table>
        <thead>
          <tr>
            <th scope="col">Shelf</th>
            <th scope="col">Firings</th>
            <th scope="col">Mostly</th>
            <th scope="col">Range</th>
          </tr>
        </thead>
        <tbody>
          {kiln.shelves.map((shelf) => (
            <tr>
              <th scope="row">{shelfTitle(shelf.shelf)}</th>
              <td>{shelf.firings}</td>
              <td>{offWords(shelf.median)}</td>
              <td>{rangeWords(shelf)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

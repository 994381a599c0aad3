/** A kiln: its firings over time, witness cones against aims, shelves compared, control tiles. */
import type { VNode } from "preact";
import type { CatalogueKiln } from "../../src/catalogue/kilns/kilns.ts";
import type { KindOfFiring } from "../../src/terms/choices.ts";
import { KilnChart } from "../charts/kiln-chart.tsx";
import { type ControlWithTwins, Twins } from "../parts/control-twins.tsx";
import { Document } from "../parts/document.tsx";
import { type FiringLineProps, FiringLines } from "../parts/firing-lines.tsx";
import type { Frame } from "../parts/frame.ts";
import { KilnCare, RakuCare } from "../parts/kiln-care.tsx";
import type { Turn } from "../parts/turn.ts";
import { TurnPages } from "../parts/turn-pages.tsx";
import { count } from "../words/english/numbers.ts";
import {
  kilnSentence,
  offWords,
  rangeWords,
  shelfTitle,
  tiltSentence,
} from "../words/firing/kiln.ts";

export interface KilnPageProps {
  readonly frame: Frame;
  readonly kiln: CatalogueKiln;
  /** The first of its firings, newest first, and how the list goes on. */
  readonly firings: readonly FiringLineProps[];
  readonly turn: Turn;
  /** Of all its firings. */
  readonly kinds: readonly KindOfFiring[];
  /** The control tiles, each with its twins in this kiln. */
  readonly controls: readonly (ControlWithTwins & {
    readonly summary: string;
    readonly older: number;
  })[];
  /** How many more control tiles had twins in it. */
  readonly otherControls: number;
}

export function KilnPage(props: KilnPageProps): VNode {
  const { frame, kiln, firings, turn, kinds, controls } = props;
  const sentence = kilnSentence(kiln);
  return (
    <Document
      styles="kiln"
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
      <RakuCare kinds={kinds} />
      <OverTime kiln={kiln} />
      <ShelvesCompared kiln={kiln} />
      {controls.map(({ control, twins, unknown, trust, summary, older }) => (
        <section class="control">
          <h2>
            The control tile in this kiln: {control.names || "no glaze"}, as{" "}
            <a class="code" href={frame.root + control.url}>
              {control.id}
            </a>
          </h2>
          <p class="measure">
            {summary}
            {older > 0 && ` Here are the newest; ${count(older, "older twin")} stood in it too.`}
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
      {props.otherControls > 0 && (
        <p class="quiet measure">
          {count(props.otherControls, "other control tile")} had twins in it earlier; the pages of
          those firings show them.
        </p>
      )}
      <section>
        <h2>Its firings, the newest first</h2>
        <FiringLines root={frame.root} firings={firings} withKiln={false} />
        <TurnPages root={frame.root} turn={turn} many="firings" />
      </section>
      <KilnCare root={frame.root} heatedBy={kiln.heatedBy} kinds={kinds} />
    </Document>
  );
}

/** With more firings than this nobody can read the drawing; the others are in the list. */
const mostColumns = 40;

function OverTime({ kiln }: { readonly kiln: CatalogueKiln }): VNode | null {
  const against = kiln.firings.filter(({ aim }) => aim !== null);
  if (against.length === 0) return null;
  return (
    <figure class="kiln-figure">
      <h2>Cones hotter or cooler than the aim, firing by firing</h2>
      <KilnChart firings={kiln.firings.slice(-mostColumns)} />
      <figcaption>
        {kiln.firings.length > mostColumns &&
          `The newest ${mostColumns} of ${count(kiln.firings.length, "firing")}. `}
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

/** The map of one cone: what came out here, against the boundaries that are published. */
import type { VNode } from "preact";
import { ratioField } from "../../src/chemistry/stull.ts";
import type { Cone } from "../../src/terms/cones.ts";
import { presentOxides } from "../../src/terms/oxides.ts";
import { MapPhotographs, type ShownMark } from "../mixing/map-photographs.tsx";
import { MapTable } from "../mixing/map-table.tsx";
import { type NumberedMark, RatioMap } from "../mixing/ratio-map.tsx";
import { Document } from "../parts/document.tsx";
import { Formula } from "../parts/formula.tsx";
import type { Frame } from "../parts/frame.ts";
import type { Turn } from "../parts/turn.ts";
import { TurnPages } from "../parts/turn-pages.tsx";
import { count } from "../words/english/numbers.ts";
import { pageTitle } from "../words/english/turning.ts";
import { boundarySentences, markKey, seenSentence } from "../words/mixing/map.ts";

/** A map by its cone and the number of glazes on it. */
export interface MapTold {
  readonly cone: Cone;
  readonly glazes: number;
}

export interface MapPageProps {
  readonly frame: Frame;
  readonly map: MapTold;
  /** In the order of their ratio. */
  readonly marks: readonly NumberedMark[];
  /** Those in this page's part of the photographs and the table, and how they go on. */
  readonly rows: readonly ShownMark[];
  readonly turn: Turn;
}

/** The first page holds the map; the others go on with its photographs and figures. */
export function MapPage({ frame, map, marks, rows, turn }: MapPageProps): VNode {
  const sentence = mapSentence(map);
  const title = pageTitle(`The map of cone ${map.cone}`, turn.here, turn.pages);
  return (
    <Document
      styles="map"
      frame={frame}
      title={title}
      summary={sentence}
      section="glazes"
      kind="entry map-page"
    >
      <header class="opening">
        <h1>
          The map of cone <span class="cone-name">{map.cone}</span>
          {pageTitle("", turn.here, turn.pages)}
        </h1>
        <p class="lede">{sentence}</p>
      </header>
      {turn.here === 0 && <Drawn root={frame.root} marks={marks} />}
      <div class="columns map-columns">
        <section>
          <h2>In the order of their ratio</h2>
          <MapPhotographs root={frame.root} marks={rows} />
        </section>
        <section>
          <h2>The same in figures</h2>
          <div class="scroll">
            <MapTable root={frame.root} marks={rows} />
          </div>
        </section>
      </div>
      <TurnPages root={frame.root} turn={turn} many="glazes" />
    </Document>
  );
}

function Drawn({
  root,
  marks,
}: {
  readonly root: string;
  readonly marks: readonly NumberedMark[];
}) {
  return (
    <div class="map-head">
      <RatioMap root={root} marks={marks} />
      <div class="map-told">
        <p>{seenSentence(marks)}</p>
        {boundarySentences(marks).map((sentence) => (
          <p>{sentence}</p>
        ))}
        <p class="quiet">{markKey(marks)}</p>
        <BoundarySources />
        <p class="quiet">
          The kinds of flux, the cooling and the clay are not on the map, so glazes in one place may
          look quite different.
        </p>
      </div>
    </div>
  );
}

/** `20 glazes mixed here and fired alone to cone 6.` */
export function mapSentence({ cone, glazes }: MapTold): string {
  return `${count(glazes, "glaze")} mixed here and fired alone to cone ${cone}.`;
}

/** What the lines are and what they are not. */
function BoundarySources(): VNode {
  const fluxes = presentOxides(ratioField.fluxes).map(([oxide, moles], i) => (
    <>
      {i > 0 && " and "}
      {moles} <Formula of={oxide} />
    </>
  ));
  return (
    <p class="quiet">
      The upright lines are old guidance, not a rule: for one kind of glaze, with {fluxes}, at{" "}
      {ratioField.cone}. After {ratioField.source} ({ratioField.tag}); texts differ on where they
      run. They move with the cone: {ratioField.since}.
    </p>
  );
}

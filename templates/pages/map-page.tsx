/** The map of one cone, with the old ratio lines to lay over it. */
import type { VNode } from "preact";
import { ratioField } from "../../src/chemistry/stull.ts";
import type { Cone } from "../../src/terms/cones.ts";
import { presentOxides } from "../../src/terms/oxides.ts";
import { GlazeMap, letterOf, type ShownMark } from "../mixing/glaze-map.tsx";
import { MapTable } from "../mixing/map-table.tsx";
import { findCrowds } from "../mixing/map-view.ts";
import { Document } from "../parts/document.tsx";
import { Formula } from "../parts/formula.tsx";
import type { Frame } from "../parts/frame.ts";
import type { Turn } from "../parts/turn.ts";
import { TurnPages } from "../parts/turn-pages.tsx";
import { Strip } from "../parts/wall.tsx";
import { count } from "../words/english/numbers.ts";
import { pageTitle } from "../words/english/turning.ts";

/** A map by its cone and the number of glazes on it. */
export interface MapTold {
  readonly cone: Cone;
  readonly glazes: number;
}

export interface MapPageProps {
  readonly frame: Frame;
  readonly map: MapTold;
  readonly marks: readonly ShownMark[];
  /** Those in this page's part of the table, and how the table goes on. */
  readonly rows: readonly ShownMark[];
  readonly turn: Turn;
}

/** The first page holds the map; the others go on with its figures. */
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
      <section>
        <h2>The same in figures</h2>
        <div class="scroll">
          <MapTable root={frame.root} marks={rows} />
        </div>
        <TurnPages root={frame.root} turn={turn} many="glazes" />
      </section>
    </Document>
  );
}

/** So many cards at most below the map, of all its crowds. */
const cardsOfCrowds = 40;

function Drawn({ root, marks }: { readonly root: string; readonly marks: readonly ShownMark[] }) {
  const crowds = findCrowds(marks);
  const most = Math.max(1, Math.min(12, Math.floor(cardsOfCrowds / Math.max(1, crowds.length))));
  return (
    <>
      <p class="quiet measure">
        Each photograph is placed by the glaze’s computed unity formula: silica across, alumina up.
        Boron, the kinds of flux and the clay are not shown, so glazes in one place may look quite
        different.
      </p>
      <p class="lay-over">
        <label>
          <input type="checkbox" class="lay-old-lines" /> Show the old ratio lines
        </label>
      </p>
      <OldLinesWords />
      <div class="scroll">
        <GlazeMap root={root} marks={marks} />
      </div>
      {crowds.map((members, i) => (
        <section id={`crowd-${letterOf(i)}`}>
          <h2>
            {letterOf(i)}: {members.length} glazes in one place
            {members.length > most && `, ${most} of them here`}
          </h2>
          <Strip
            root={root}
            tiles={members.slice(0, most).flatMap((member) => marks[member]?.tile ?? [])}
          />
        </section>
      ))}
    </>
  );
}

/** `20 glazes mixed here and fired alone to cone 6.` */
export function mapSentence({ cone, glazes }: MapTold): string {
  return `${count(glazes, "glaze")} mixed here and fired alone to cone ${cone}.`;
}

/** What the lines are and what they are not. */
function OldLinesWords(): VNode {
  const fluxes = presentOxides(ratioField.fluxes).map(([oxide, moles], i) => (
    <>
      {i > 0 && " and "}
      {moles} <Formula of={oxide} />
    </>
  ));
  return (
    <p class="quiet measure old-lines">
      The lines are old guidance, not a rule: for one kind of glaze, with {fluxes}, at{" "}
      {ratioField.cone}. After {ratioField.source} ({ratioField.tag}); texts differ on where they
      run. That they move with the cone: {ratioField.since}. Where a tile here came out differently
      from the lines, its outline is dashed, and the table says so.
    </p>
  );
}

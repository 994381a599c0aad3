/** The map of one cone, with the old ratio lines to lay over it. */
import type { VNode } from "preact";
import type { CatalogueMap } from "../../src/catalogue/mixing/maps.ts";
import { ratioField } from "../../src/chemistry/stull.ts";
import { presentOxides } from "../../src/terms/oxides.ts";
import { GlazeMap, letterOf, type ShownMark } from "../mixing/glaze-map.tsx";
import { MapTable } from "../mixing/map-table.tsx";
import { findCrowds } from "../mixing/map-view.ts";
import { Document } from "../parts/document.tsx";
import { Formula } from "../parts/formula.tsx";
import type { Frame } from "../parts/frame.ts";
import { Strip } from "../parts/wall.tsx";
import { count } from "../words/english/numbers.ts";

export interface MapPageProps {
  readonly frame: Frame;
  readonly map: CatalogueMap;
  readonly marks: readonly ShownMark[];
}

export function MapPage({ frame, map, marks }: MapPageProps): VNode {
  const sentence = mapSentence(map);
  const title = `The map of cone ${map.cone}`;
  return (
    <Document frame={frame} title={title} summary={sentence} section="glazes" kind="entry map-page">
      <header class="opening">
        <h1>
          The map of cone <span class="cone-name">{map.cone}</span>
        </h1>
        <p class="lede">{sentence}</p>
      </header>
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
        <GlazeMap root={frame.root} marks={marks} />
      </div>
      {findCrowds(marks).map((members, i) => (
        <section id={`crowd-${letterOf(i)}`}>
          <h2>
            {letterOf(i)}: {members.length} glazes in one place
          </h2>
          <Strip root={frame.root} tiles={members.flatMap((member) => marks[member]?.tile ?? [])} />
        </section>
      ))}
      <section>
        <h2>The same in figures</h2>
        <div class="scroll">
          <MapTable root={frame.root} marks={marks} />
        </div>
      </section>
    </Document>
  );
}

/** `20 glazes mixed here and fired alone to cone 6.` */
export function mapSentence({ cone, marks }: CatalogueMap): string {
  return `${count(marks.length, "glaze")} mixed here and fired alone to cone ${cone}.`;
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

/** A glaze: what it is, how it looks alone, over and under others, and what it is made of. */
import type { VNode } from "preact";
import type { ColourTrust } from "../../src/catalogue/colours/trust.ts";
import type { CatalogueGlaze, GlazePair } from "../../src/catalogue/glazes.ts";
import type { Link } from "../../src/catalogue/link.ts";
import type { Company } from "../../src/catalogue/mixing/companies.ts";
import { formatConeRange } from "../../src/terms/cones.ts";
import { AmongOthers } from "../mixing/company.tsx";
import { ExpansionAndFit } from "../mixing/expansion.tsx";
import { Hazards, LoudHazards } from "../mixing/hazards.tsx";
import { WeighingSheet } from "../mixing/weighing-sheet.tsx";
import { Chemistry } from "../parts/chemistry.tsx";
import { Definitions } from "../parts/definitions.tsx";
import { Document } from "../parts/document.tsx";
import type { TileEntry } from "../parts/entry.ts";
import type { Frame } from "../parts/frame.ts";
import { ColoursAlone } from "../parts/glaze-colours.tsx";
import { LeachTests } from "../parts/leach-tests.tsx";
import { Cautions, Quotation } from "../parts/notes.tsx";
import { Recipe } from "../parts/recipe.tsx";
import { Wall } from "../parts/wall.tsx";
import { count } from "../words/english/numbers.ts";
import { glazeSentence, labelSentence } from "../words/glaze/glaze.ts";

export interface GlazePageProps {
  readonly frame: Frame;
  readonly glaze: CatalogueGlaze;
  /** The tiles on which it is alone, and the others that it is on. */
  readonly alone: readonly TileEntry[];
  readonly others: readonly TileEntry[];
  readonly trust: ColourTrust | null;
  /** The maps that it stands on. */
  readonly maps: readonly Link[];
  /** Where it may be looked for among other glazes. */
  readonly companies: readonly Company[];
}

export function GlazePage(props: GlazePageProps): VNode {
  const { frame, glaze, alone, others } = props;
  const sentence = glazeSentence(glaze);
  return (
    <Document
      frame={frame}
      title={glaze.name}
      summary={sentence}
      section="glazes"
      kind="entry"
      scripts={glaze.batch ? ["assets/weighing.js"] : []}
    >
      <header class="opening">
        <h1>{glaze.name}</h1>
        <p class="lede">{sentence}</p>
      </header>
      <LoudHazards root={frame.root} hazards={glaze.hazards} />
      <TilesAlone root={frame.root} name={glaze.name} tiles={alone} others={others.length} />
      <ColoursAlone root={frame.root} glaze={glaze} trust={props.trust} />
      <div class="columns">
        <Pairs root={frame.root} title={`${glaze.name} over`} pairs={glaze.over} />
        <Pairs root={frame.root} title={`${glaze.name} under`} pairs={glaze.under} />
      </div>
      {others.length > 0 && <Wall root={frame.root} tiles={others} />}
      <div class="columns">
        <div>
          <Facts {...props} />
          <Quotation notes={glaze.notes} />
          <Cautions notes={glaze.cautions} />
          <LeachTests tests={glaze.leachTests} />
        </div>
        <div>
          {glaze.blend && <Recipe root={frame.root} glaze={glaze} />}
          <Chemistry glaze={glaze} />
          <SeeAlso {...props} />
        </div>
      </div>
      {glaze.batch === null && glaze.hazards.length > 0 && (
        <section id="mind">
          <h2>What to mind</h2>
          <Hazards root={frame.root} hazards={glaze.hazards} />
        </section>
      )}
      <AmongOthers root={frame.root} glaze={glaze} companies={props.companies} />
      <WeighingSheet root={frame.root} glaze={glaze} />
      <ExpansionAndFit root={frame.root} glaze={glaze} />
    </Document>
  );
}

function Facts({ glaze }: GlazePageProps): VNode {
  const { cones } = glaze;
  return (
    <Definitions
      of={[
        ["Cones", cones && <span class="code">{formatConeRange(cones)}</span>],
        ["Surface", glaze.surface],
        ["Cover", glaze.cover],
        ["Moves", glaze.moves],
        ["Tone", glaze.tone],
        ["The label says", labelSentence(glaze)],
        ["In the studio", glaze.stocked ? "stocked" : "no longer stocked"],
        ["Tiles", count(glaze.tiles.length, "tile")],
      ]}
    />
  );
}

/** The blends that it is part of, and the maps that it stands on. */
function SeeAlso({ frame, glaze, maps }: GlazePageProps): VNode | null {
  const links = [...glaze.blends, ...maps];
  if (links.length === 0) return null;
  return (
    <section>
      <h2>See also</h2>
      <ul class="names-list">
        {links.map(({ name, url }) => (
          <li>
            <a href={frame.root + url}>{name}</a>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** The glazes it was tried with, each leading to the page of the two. */
function Pairs(props: {
  readonly root: string;
  readonly title: string;
  readonly pairs: readonly GlazePair[];
}): VNode | null {
  if (props.pairs.length === 0) return null;
  return (
    <section class="pairs">
      <h2>{props.title}</h2>
      <ul class="names-list">
        {props.pairs.map(({ glaze, pair, tiles }) => (
          <li>
            <a href={props.root + pair}>
              {glaze.name} <small>{tiles}</small>
            </a>
          </li>
        ))}
      </ul>
    </section>
  );
}

function TilesAlone(props: {
  readonly root: string;
  readonly name: string;
  readonly tiles: readonly TileEntry[];
  readonly others: number;
}): VNode {
  const { root, name, tiles, others } = props;
  if (tiles.length > 0) return <Wall root={root} tiles={tiles} first />;
  return (
    <p class="empty">
      {others > 0
        ? `No tile has ${name} by itself yet, which would show its own colour.`
        : `No tile has ${name} yet. A tile with it among its layers shows here.`}
    </p>
  );
}

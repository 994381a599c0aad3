/** A glaze: what it is, how it looks alone, over and under others, and what it is made of. */
import type { VNode } from "preact";
import type { ColourTrust } from "../../src/catalogue/colours/trust.ts";
import type { GlazePair, GlazeTold } from "../../src/catalogue/glazes.ts";
import type { GlazeStory } from "../../src/catalogue/history/stories.ts";
import type { Link } from "../../src/catalogue/link.ts";
import type { Company } from "../../src/catalogue/mixing/companies.ts";
import { formatConeRange } from "../../src/terms/cones.ts";
import { idSlug } from "../../src/terms/ids.ts";
import { glazeThing } from "../linked/things.ts";
import { trailTo } from "../linked/trail.ts";
import { AmongOthers } from "../mixing/company.tsx";
import { ExpansionAndFit } from "../mixing/expansion.tsx";
import { Hazards, LoudHazards } from "../mixing/hazards.tsx";
import { WeighingSheet } from "../mixing/weighing-sheet.tsx";
import { Chemistry } from "../parts/chemistry.tsx";
import { Definitions } from "../parts/definitions.tsx";
import { Document } from "../parts/document.tsx";
import type { Frame } from "../parts/frame.ts";
import { ColoursAlone } from "../parts/glaze-colours.tsx";
import { LeachTests } from "../parts/leach-tests.tsx";
import type { LeadPicture } from "../parts/lead-picture.ts";
import { Cautions, Quotation } from "../parts/notes.tsx";
import { Recipe } from "../parts/recipe.tsx";
import { RecordFoot, type RecordFootProps } from "../parts/record-foot.tsx";
import { RecordStory } from "../parts/record-story.tsx";
import { SetBeside } from "../parts/set-beside.tsx";
import { type GlazeStrips, Strips } from "../parts/strip.tsx";
import type { Turn } from "../parts/turn.ts";
import { PartLine, TurnPages } from "../parts/turn-pages.tsx";
import { count, grouped } from "../words/english/numbers.ts";
import { glazeSentence, labelSentence } from "../words/glaze/glaze.ts";
import { recipeHistory } from "../words/glaze/history.ts";
import { type MorePageProps, TileGroups } from "./more-page.tsx";

/** The headings of its tiles. */
export const [onlyGlaze, withOthers] = ["The only glaze", "With other glazes"];

/** A glaze without its lists of tiles, and with as many pairs as its page names. */
export interface GlazeOnItsPage extends GlazeTold {
  readonly tiles: number;
  readonly over: Pairings;
  readonly under: Pairings;
}

/** Glazes that one was tried with. */
export interface Pairings {
  readonly named: readonly GlazePair[];
  /** How many there are. */
  readonly of: number;
  /** The list of all, where they are not all named. */
  readonly url: string;
}

export interface GlazePageProps {
  readonly frame: Frame;
  /** Null where the page says nothing of its file. */
  readonly foot: RecordFootProps | null;
  /** When its recipe was changed; null where it was not, or nobody asked git. */
  readonly story: GlazeStory | null;
  readonly glaze: GlazeOnItsPage;
  /** The first tiles on which it is alone, the first of the others, and how the list goes on. */
  readonly groups: MorePageProps["groups"];
  readonly turn: Turn;
  readonly wall: string | null;
  /** The first photograph of its tiles, of one on which it is alone if there is any. */
  readonly lead: LeadPicture | null;
  readonly trust: ColourTrust | null;
  /** The maps that it stands on. */
  readonly maps: readonly Link[];
  /** Its tiles that differ in one thing alone. */
  readonly strips: GlazeStrips;
  /** Where it may be looked for among other glazes. */
  readonly companies: readonly Company[];
}

export function GlazePage(props: GlazePageProps): VNode {
  const { frame, glaze, turn } = props;
  const part = (heading: string) => props.groups.filter(({ title }) => title === heading);
  const sentence = glazeSentence(glaze);
  return (
    <Document
      styles="glaze"
      frame={frame}
      title={glaze.name}
      summary={sentence}
      section="glazes"
      lead={props.lead}
      linked={[
        glazeThing(frame, glaze, sentence, isShownAlone(props) ? props.lead : null),
        trailTo(frame, "glazes", glaze.name),
      ]}
      kind="entry glaze-page"
      scripts={glaze.batch ? ["assets/weighing.js"] : ["assets/printing.js"]}
    >
      <header class="opening">
        <h1>{glaze.name}</h1>
        <p class="lede">{sentence}</p>
        <SetBeside kind="glazes" id={glaze.id} />
        <p class="quiet screen">
          <a href={`${frame.root}grid.html?over=${idSlug(glaze.id)}`}>{glaze.name} on the grid</a>,
          over and under the others.
        </p>
      </header>
      <LoudHazards root={frame.root} hazards={glaze.hazards} />
      <PartLine root={frame.root} turn={turn} many="tiles" wall={props.wall} />
      <div class="columns glaze-head">
        <TilesAlone root={frame.root} glaze={glaze} alone={part(onlyGlaze)} />
        <div class="glaze-facts">
          <Facts {...props} />
          <Quotation notes={glaze.notes} />
          <Cautions notes={glaze.cautions} />
          <LeachTests tests={glaze.leachTests} />
          {!glaze.batch && <ToMind root={frame.root} glaze={glaze} />}
          <p class="quiet on-paper">
            Colours alone, tiles with other glazes and expansion are on its page, not on this print.
          </p>
        </div>
      </div>
      <p class="print-place" data-print="Print this glaze" />
      <Bench {...props} />
      <ColoursAndPairs {...props} />
      <Strips root={frame.root} strips={props.strips} />
      <AmongOthers root={frame.root} glaze={glaze} companies={props.companies} />
      <ExpansionAndFit root={frame.root} glaze={glaze} />
      <TileGroups root={frame.root} groups={part(withOthers)} />
      <TurnPages root={frame.root} turn={turn} many="tiles" />
      <RecordFoot of={props.foot} />
      <RecordStory of={recipeHistory(props.story)} />
    </Document>
  );
}

/** Whether its first photograph shows it and no other glaze. */
function isShownAlone({ groups }: GlazePageProps): boolean {
  const shown = groups.find(({ items }) => items.some(({ picture }) => picture !== null));
  return shown?.title === onlyGlaze;
}

/** The cautions of a glaze that is not weighed out here; those of others are on their sheet. */
function ToMind({ root, glaze }: { readonly root: string; readonly glaze: GlazeOnItsPage }) {
  if (glaze.hazards.length === 0) return null;
  return (
    <section id="mind">
      <h2>What to mind</h2>
      <Hazards root={root} hazards={glaze.hazards} />
    </section>
  );
}

/** What it is made of; where it is weighed out here, the scale beside it. */
function Bench(props: GlazePageProps): VNode {
  const { frame, glaze } = props;
  const made = (
    <>
      {glaze.blend && <Recipe root={frame.root} glaze={glaze} />}
      <Chemistry glaze={glaze} />
      <SeeAlso {...props} />
    </>
  );
  if (glaze.batch)
    return (
      <WeighingSheet root={frame.root} glaze={glaze}>
        {made}
      </WeighingSheet>
    );
  return <div class="made">{made}</div>;
}

function Facts({ frame, glaze }: GlazePageProps): VNode {
  const { cones } = glaze;
  return (
    <Definitions
      of={[
        ["Cones", cones && <span class="code">{formatConeRange(cones)}</span>],
        ["Surface", glaze.surface],
        ["Cover", glaze.cover],
        [
          "Moves",
          <>
            {glaze.moves ?? "not recorded"}; see{" "}
            <a href={`${frame.root}runs.html`}>what runs here</a>
          </>,
        ],
        ["Tone", glaze.tone],
        ["The label says", labelSentence(glaze)],
        ["In the studio", glaze.stocked ? "stocked" : "no longer stocked"],
        ["Tiles", count(glaze.tiles, "tile")],
      ]}
    />
  );
}

/** So many blends that a glaze is part of are named. */
const blendsNamed = 40;

/** The blends that it is part of, and the maps that it is on. */
function SeeAlso({ frame, glaze, maps }: GlazePageProps): VNode | null {
  const links = [...glaze.blends.slice(0, blendsNamed), ...maps];
  const others = glaze.blends.length - blendsNamed;
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
        {others > 0 && (
          <li>
            <a href={`${frame.root}blends/index.html`}>
              {count(others, "more blend")}, in the list of all
            </a>
          </li>
        )}
      </ul>
    </section>
  );
}

/** Its colours alone, beside the glazes that it was tried with. */
function ColoursAndPairs({ frame: { root }, glaze, trust }: GlazePageProps): VNode {
  const { name, over, under } = glaze;
  const colours = <ColoursAlone root={root} glaze={glaze} trust={trust} />;
  if (over.of + under.of === 0) return colours;
  return (
    <div class="columns">
      {colours}
      <div>
        <Pairs root={root} title={`${name} over`} pairings={over} />
        <Pairs root={root} title={`${name} under`} pairings={under} />
      </div>
    </div>
  );
}

/** The glazes it was tried with, each leading to the page of the two. */
function Pairs(props: {
  readonly root: string;
  readonly title: string;
  readonly pairings: Pairings;
}): VNode | null {
  const { named, of, url } = props.pairings;
  if (named.length === 0) return null;
  return (
    <section class="pairs">
      <h2>{props.title}</h2>
      <ul class="names-list">
        {named.map(({ glaze, pair, tiles }) => (
          <li>
            <a href={props.root + pair}>
              {glaze.name} <small>{tiles}</small>
            </a>
          </li>
        ))}
      </ul>
      {named.length < of && (
        <p class="quiet">
          The {grouped(named.length)} with most tiles, of {grouped(of)}:{" "}
          <a href={props.root + url}>all of them</a>
        </p>
      )}
    </section>
  );
}

function TilesAlone(props: {
  readonly root: string;
  readonly glaze: GlazeOnItsPage;
  readonly alone: MorePageProps["groups"];
}): VNode {
  const { root, alone } = props;
  const { name, tiles } = props.glaze;
  if (alone.length > 0) return <TileGroups root={root} groups={alone} first />;
  return (
    <p class="empty">
      {tiles > 0
        ? `No tile has ${name} by itself yet, which would show its own colour.`
        : `No tile has ${name} yet. A tile with it among its layers shows here.`}
    </p>
  );
}

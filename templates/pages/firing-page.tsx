/** A firing: how it went, its curve, what the cones said, and what stood on each shelf. */
import type { VNode } from "preact";
import type { CatalogueFiring } from "../../src/catalogue/kilns/firings.ts";
import type { LoadFume } from "../../src/catalogue/minding.ts";
import type { TemperatureUnit } from "../../src/firing/units.ts";
import { AccountsChart } from "../charts/accounts-chart.tsx";
import { FiringFigure } from "../charts/firing-figure.tsx";
import { trailTo } from "../linked/trail.ts";
import { LoadFumes } from "../mixing/minding.tsx";
import { type ControlWithTwins, Twins } from "../parts/control-twins.tsx";
import { Document } from "../parts/document.tsx";
import { HeatFacts, LogRead, Programme, Witnesses } from "../parts/firing-facts.tsx";
import { Readings, StoryLede } from "../parts/firing-story.tsx";
import type { Frame } from "../parts/frame.ts";
import { KilnCare, RakuCare } from "../parts/kiln-care.tsx";
import type { LeadPicture } from "../parts/lead-picture.ts";
import { Quotation } from "../parts/notes.tsx";
import { RecordFoot, type RecordFootProps } from "../parts/record-foot.tsx";
import type { Turn } from "../parts/turn.ts";
import { PartLine, TurnPages } from "../parts/turn-pages.tsx";
import { count } from "../words/english/numbers.ts";
import { loadSentence } from "../words/firing/load.ts";
import { storyHeading } from "../words/firing/story.ts";
import { type MorePageProps, TileGroups } from "./more-page.tsx";

export interface FiringPageProps {
  readonly frame: Frame;
  /** Null where the page says nothing of its file. */
  readonly foot: RecordFootProps | null;
  readonly firing: CatalogueFiring;
  readonly unit: TemperatureUnit;
  /** The first of its tiles by their shelves, and how the list goes on. */
  readonly groups: MorePageProps["groups"];
  readonly turn: Turn;
  /** The first photograph of its tiles. */
  readonly lead: LeadPicture | null;
  /** What the glazes of the load give off in the kiln. */
  readonly fumes: readonly LoadFume[];
  /** The control tiles that had a twin in this load, each with that twin and its neighbours. */
  readonly controls: readonly ControlWithTwins[];
  /** How many more control tiles had one. */
  readonly otherControls: number;
}

export function FiringPage(props: FiringPageProps): VNode {
  const { frame, firing, unit } = props;
  const sentence = loadSentence(firing);
  return (
    <Document
      styles="firing"
      frame={frame}
      title={`Firing ${firing.id}`}
      summary={`${sentence} ${storyHeading(firing)}.`}
      section="firings"
      lead={props.lead}
      linked={[trailTo(frame, "firings", `Firing ${firing.id}`, firing.kiln)]}
      kind="entry firing"
    >
      <header class="opening">
        <p class="code plate-number">{firing.id}</p>
        <h1>{sentence}</h1>
        {firing.kiln && (
          <p class="whereabouts">
            One of the firings of <a href={frame.root + firing.kiln.url}>{firing.kiln.name}</a>.
          </p>
        )}
        <StoryLede firing={firing} />
      </header>
      <RakuCare kinds={[firing.kind]} />
      <FiringFigure firing={firing} unit={unit} />
      <div class="columns">
        <div>
          <SideBySide firing={firing} />
          <Readings firing={firing} />
          <Quotation notes={firing.notes} />
        </div>
        <div>
          <Witnesses firing={firing} />
          <Programme firing={firing} unit={unit} />
          <HeatFacts firing={firing} unit={unit} />
          <LogRead firing={firing} />
        </div>
      </div>
      <Controls {...props} />
      <Shelves {...props} />
      <LoadFumes root={frame.root} fumes={props.fumes} />
      <KilnCare
        root={frame.root}
        heatedBy={firing.heatedBy ? [firing.heatedBy] : []}
        kinds={[firing.kind]}
      />
      <RecordFoot of={props.foot} />
    </Document>
  );
}

function SideBySide({ firing: { story } }: { readonly firing: CatalogueFiring }): VNode | null {
  if (story.accounts.length < 2) return null;
  return (
    <section class="side-by-side">
      <h2>Side by side</h2>
      <AccountsChart accounts={story.accounts} />
      <p class="quiet">
        The grey band is a cone either side of the aim. Squares are witness cones; the disc is the
        log and the ring the programme, and the line through them shows how far off they may be.
      </p>
    </section>
  );
}

function Controls({ frame, firing, controls, otherControls }: FiringPageProps): VNode {
  return (
    <>
      {controls.map(({ control, twins, unknown, trust }) => (
        <section class="control">
          <h2>
            The control tile beside it: {control.names || "no glaze"}, as{" "}
            <a class="code" href={frame.root + control.url}>
              {control.id}
            </a>
          </h2>
          <Twins
            root={frame.root}
            control={control.id}
            twins={twins}
            unknown={unknown}
            trust={trust}
            withKiln
            here={firing.id}
          />
        </section>
      ))}
      {otherControls > 0 && (
        <p class="quiet measure">
          Twins of {count(otherControls, "other control tile")} were in it too; they are among its
          tiles.
        </p>
      )}
    </>
  );
}

function Shelves({ frame: { root }, groups, turn }: FiringPageProps): VNode {
  return (
    <>
      {turn.total === 0 && <p class="empty">No tile in this catalogue was in it.</p>}
      <PartLine root={root} turn={turn} many="tiles" wall={null} />
      <TileGroups root={root} groups={groups} />
      <TurnPages root={root} turn={turn} many="tiles" />
    </>
  );
}

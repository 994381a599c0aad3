/** What runs: by shape of test, the longest first, with what it means for an upright wall. */
import type { VNode } from "preact";
import type { Link } from "../../src/catalogue/link.ts";
import { Codes, type NamedCodes } from "../parts/codes.tsx";
import { Document } from "../parts/document.tsx";
import type { Frame } from "../parts/frame.ts";
import { Tested, type TestedTile } from "../parts/pair-table.tsx";
import type { Turn } from "../parts/turn.ts";
import { PartLine, TurnPages } from "../parts/turn-pages.tsx";
import { pageTitle } from "../words/english/turning.ts";

export interface RunsPageProps {
  readonly frame: Frame;
  readonly sentence: string;
  /** Every shape of test and cone, and where it begins. */
  readonly tests: readonly TestWay[];
  readonly groups: readonly {
    readonly id: string;
    readonly title: string;
    readonly words: string;
    readonly items: readonly RunnerView[];
  }[];
  readonly turn: Turn;
  /** Glazes that run by their records, of which no tile alone was seen to. */
  readonly saidToRun: readonly Link[];
}

/** The way to a shape of test at a cone. */
export interface TestWay {
  readonly title: string;
  /** Relative to the root. */
  readonly url: string;
}

export interface RunnerView {
  /** `Oilskin over Mist` */
  readonly name: string;
  /** Relative to the root; null where the glazes have no page together. */
  readonly url: string | null;
  readonly ran: string;
  /** Millimetres; null where nobody measured. */
  readonly length: number | null;
  readonly circumstance: string;
  readonly fired: string;
  readonly tally: string;
  readonly advice: string;
  /** What its record says against it; empty where it does not. */
  readonly record: string;
  /** The tile that ran farthest. */
  readonly tile: TestedTile | null;
  /** The others that ran, and those that did not. */
  readonly others: NamedCodes;
  readonly held: NamedCodes;
}

export function RunsPage(props: RunsPageProps): VNode {
  const { frame, sentence, groups, turn } = props;
  const { root } = frame;
  return (
    <Document
      styles="runs"
      frame={frame}
      title={pageTitle("What runs", turn.here, turn.pages)}
      summary={sentence}
      section="runs"
      kind="entry runs"
    >
      <header class="opening">
        <h1>{pageTitle("What runs", turn.here, turn.pages)}</h1>
        <p class="lede">{sentence}</p>
      </header>
      <div class="columns">
        {turn.here === 0 && <CommonPractice root={root} />}
        <Tests {...props} />
      </div>
      <PartLine root={root} turn={turn} many="entries" wall={null} />
      {turn.total === 0 && (
        <p class="empty">
          Nothing has run here yet. A tile with run: in its result, of 5 mm or more, shows here.
        </p>
      )}
      {groups.map(({ id, title, words, items }) => (
        <section class="test" id={id}>
          <h2>{title}</h2>
          <p class="measure">{words}</p>
          <ol>
            {items.map((runner) => (
              <Entry root={root} runner={runner} />
            ))}
          </ol>
        </section>
      ))}
      <TurnPages root={root} turn={turn} many="entries" />
      {turn.here === 0 && <SaidToRun {...props} />}
    </Document>
  );
}

/** The ways to each shape of test and cone, where there is more than one. */
function Tests({ frame: { root }, tests }: RunsPageProps): VNode | null {
  if (tests.length < 2) return null;
  return (
    <nav class="tests" aria-label="Shapes of test and cones">
      <ul class="names-list">
        {tests.map(({ title, url }) => (
          <li>
            <a href={root + url}>{title}</a>
          </li>
        ))}
      </ul>
    </nav>
  );
}

/** What every pottery says of what runs, apart from what these tiles say. */
function CommonPractice({ root }: { readonly root: string }): VNode {
  return (
    <div class="practice measure">
      <p>
        <b>Common practice, no source.</b> Leave the foot bare, wider for what runs. Put fewer coats
        toward the foot, and no glaze that runs over another that does. Stand what is doubtful on a
        catch tray. A run of glaze breaks off sharp: gloves and eye protection to unload, chisel and
        grind. <a href={`${root}care.html#drips`}>Sharp drips</a>,{" "}
        <a href={`${root}care.html#shelves`}>shelves</a>.
      </p>
      <p class="quiet">
        Below is what this studio’s tiles did. Shapes of test, cones, clays and fires are kept
        apart. A tile proves nothing about a pot: a thicker coat, a hotter shelf or a taller wall
        runs farther.
      </p>
    </div>
  );
}

function Entry({ root, runner }: { readonly root: string; readonly runner: RunnerView }): VNode {
  const { name, url, ran, length, circumstance, fired, tally, advice, record } = runner;
  return (
    <li>
      <h3>{url === null ? name : <a href={root + url}>{name}</a>}</h3>
      <p class="length">
        {length !== null && <Drop length={length} />}
        {ran}
      </p>
      <p class="told">
        {[circumstance, fired].filter(Boolean).join(", ")}. {tally}
      </p>
      <p class="advice">{[advice, record].filter(Boolean).join(" ")}</p>
      {runner.tile && <Tested root={root} tile={runner.tile} />}
      <NamedTiles root={root} words="Also ran:" of={runner.others} />
      <NamedTiles root={root} words="Did not run:" of={runner.held} />
    </li>
  );
}

function NamedTiles(props: {
  readonly root: string;
  readonly words: string;
  readonly of: NamedCodes;
}): VNode | null {
  if (props.of.links.length === 0) return null;
  return (
    <p class="quiet">
      {props.words} <Codes root={props.root} of={props.of} />
    </p>
  );
}

/** A longer drop than this many millimetres is drawn no longer: its number says how long it is. */
const longestDrop = 80;

/** As long as the glaze ran, where a page is printed as large as it is. */
function Drop({ length }: { readonly length: number }): VNode {
  const width = Math.min(length, longestDrop);
  const end = width - 1.5;
  return (
    <svg
      class="drop"
      width={`${width}mm`}
      height="3mm"
      viewBox={`0 0 ${width} 3`}
      aria-hidden="true"
    >
      <path d={`M0 0.6L${end - 1} 1.1A1.5 1.1 0 1 1 ${end - 1} 1.9L0 2.4Z`} />
    </svg>
  );
}

function SaidToRun({ frame: { root }, saidToRun }: RunsPageProps): VNode | null {
  if (saidToRun.length === 0) return null;
  return (
    <section>
      <h2>Said to run, and not seen to yet</h2>
      <p class="measure">
        The records of these say that they run. No tile of them alone has shown it here: treat them
        as if they did.
      </p>
      <ul class="names-list">
        {saidToRun.map(({ name, url }) => (
          <li>
            <a href={root + url}>{name}</a>
          </li>
        ))}
      </ul>
    </section>
  );
}

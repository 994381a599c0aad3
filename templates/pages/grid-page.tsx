/** The grid: what lies on top across, what lies underneath down; and the same pairs as a list. */
import type { VNode } from "preact";
import { Document } from "../parts/document.tsx";
import type { Frame } from "../parts/frame.ts";
import type { Turn } from "../parts/turn.ts";
import { TurnPages } from "../parts/turn-pages.tsx";
import { pageTitle } from "../words/english/turning.ts";
import { type GridChoice, gridLede, gridOrders, gridSheetKey } from "../words/site/grid.ts";

export interface GridPageProps {
  readonly frame: Frame;
  /** What can be chosen; null on the further pages of the list, which have no grid. */
  readonly choices: GridChoices | null;
  /** The file with the first squares, from the root. */
  readonly squares: string;
  /** Pairs by the cone they were fired to. */
  readonly groups: readonly { readonly title: string; readonly items: readonly PairLine[] }[];
  readonly turn: Turn;
}

export interface GridChoices {
  readonly cones: readonly GridChoice[];
  readonly clays: readonly GridChoice[];
  readonly atmospheres: readonly GridChoice[];
}

/** A pair at one cone. */
export interface PairLine {
  readonly name: string;
  readonly url: string;
  readonly tiles: number;
}

export function GridPage({ frame, choices, squares, groups, turn }: GridPageProps): VNode {
  const title = pageTitle("The grid", turn.here, turn.pages);
  return (
    <Document
      styles="grid"
      frame={frame}
      title={title}
      summary={gridLede}
      section="grid"
      kind="entry grid-page"
      scripts={choices ? ["data/grid.js", squares, "assets/grid.js"] : []}
    >
      <header class="opening">
        <h1>{title}</h1>
        {choices && <p class="lede">{gridLede}</p>}
        {choices && (
          <p class="quiet">
            Up to four tiles or glazes, step by step:{" "}
            <a href={`${frame.root}beside.html`}>side by side</a>.
          </p>
        )}
      </header>
      {choices && <Grid root={frame.root} {...choices} />}
      <section class="grid-list">
        <h2>The pairs that were tried, as a list</h2>
        {turn.total === 0 && (
          <p class="empty">
            No two glazes have met on a tile yet. The first tile with one over another begins this
            grid.
          </p>
        )}
        {groups.map(({ title: cone, items }) => (
          <section>
            <h3>{cone}</h3>
            <ul>
              {items.map(({ name, url, tiles }) => (
                <li>
                  <a href={frame.root + url}>
                    {name} <small>{tiles}</small>
                  </a>
                </li>
              ))}
            </ul>
          </section>
        ))}
        <TurnPages root={frame.root} turn={turn} many="pairs" />
      </section>
    </Document>
  );
}

/** Drawn by its script, in a place that is kept for it. */
function Grid(props: GridChoices & { readonly root: string }): VNode {
  const { root, cones, clays, atmospheres } = props;
  return (
    <div id="grid" data-root={root}>
      <div class="grid-choices">
        <Choice name="cone" lead="At cone" options={cones} />
        <Choice name="clay" lead="on" spoken="on clay" any="any clay" options={clays} />
        <Choice
          name="atmosphere"
          lead="in"
          spoken="in a fire"
          any="any fire"
          options={atmospheres}
        />
        <Choice name="by" lead="by" spoken="in the order of" options={gridOrders} />
        <Choice
          name="glazes"
          lead="with"
          spoken="with which glazes"
          options={[
            { key: "cone", words: "its glazes" },
            { key: "all", words: "all glazes" },
          ]}
        />
      </div>
      <p class="told" role="status" />
      <div class="board" />
      <section class="reading" tabIndex={-1} aria-label="The square you are at" />
      <figure class="grid-sheet">
        <div class="sheet-place" />
        <figcaption>{gridSheetKey}</figcaption>
      </figure>
    </div>
  );
}

function Choice(props: {
  readonly name: string;
  readonly lead: string;
  readonly spoken?: string;
  readonly any?: string;
  readonly options: readonly GridChoice[];
}): VNode {
  const { name, lead, spoken = lead, any, options } = props;
  return (
    <label>
      <span class="lead">{lead} </span>
      <select name={name} aria-label={spoken} autocomplete="off">
        {any !== undefined && <option value="">{any}</option>}
        {options.map(({ key, words }) => (
          <option value={key}>{words}</option>
        ))}
      </select>{" "}
    </label>
  );
}

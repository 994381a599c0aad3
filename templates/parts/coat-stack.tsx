/**
 * What was done, row by row beside the layer drawing. The list is read from 1 upwards, as the tile
 * was made; on the page its rows stand as the layers do, the first at the bottom, on the clay.
 */
import type { VNode } from "preact";
import type { CatalogueStep, TileFiring } from "../../src/catalogue/kilns/tile-firings.ts";
import type { Link } from "../../src/catalogue/link.ts";
import { DrawingKey } from "../drawing/drawing-key.tsx";
import { coatsHigh, LaneDrawing } from "../drawing/layer-drawing.tsx";
import type { LayerView } from "../drawing/layer-view.ts";
import { spoken } from "../words/english/numbers.ts";
import { coatWords, firingName, markPlace, markWords, shelfWords } from "../words/tile/steps.ts";

export interface CoatStackProps {
  readonly root: string;
  readonly view: LayerView;
  readonly steps: readonly CatalogueStep[];
  readonly glazes: Readonly<Record<string, Link>>;
  readonly clay: Link | null;
  readonly texture: string;
}

export function CoatStack(props: CoatStackProps): VNode {
  const { view, steps } = props;
  return (
    <>
      <ol class="coat-stack">
        <li class="clay">
          <LaneDrawing view={view} at={-1} />
          <ClayWords {...props} />
        </li>
        {steps.map((step, i) => (
          <StackRow {...props} step={step} at={i} />
        ))}
      </ol>
      <DrawingKey view={view} />
    </>
  );
}

function ClayWords({ root, clay, texture }: CoatStackProps): VNode {
  return (
    <div class="words">
      <span class="what">
        {clay ? <a href={root + clay.url}>{clay.name}</a> : "Clay not named"}
      </span>
      <span class="how">{texture === "smooth" ? "smooth clay" : `${spoken(texture)} clay`}</span>
    </div>
  );
}

type Row = CoatStackProps & { readonly step: CatalogueStep; readonly at: number };

function StackRow(props: Row): VNode {
  const { root, view, step, at } = props;
  const lane = view.lanes[at];
  const gone = lane && "gone" in lane && lane.gone;
  return (
    <li
      class={[step.step, `high-${lane ? coatsHigh(lane) : 1}`, gone && "gone"]
        .filter(Boolean)
        .join(" ")}
    >
      <LaneDrawing view={view} at={at} />
      <div class="words">
        {step.step === "fired" ? (
          <FiringWords root={root} firing={step} />
        ) : (
          <StepWords {...props} step={step} />
        )}
        {gone && <span class="how"> (washed off again)</span>}
      </div>
    </li>
  );
}

function FiringWords({ root, firing }: { readonly root: string; readonly firing: TileFiring }) {
  const { kind, page, shelf, cone } = firing;
  const name = firingName(kind);
  return (
    <>
      <span class="what">{page ? <a href={root + page.url}>{name}</a> : name}</span>
      {shelf && <span class="how">{shelfWords(shelf)}</span>}
      {cone && (
        <span class="cone">
          <span class="unseen">cone </span>
          {cone}
        </span>
      )}
    </>
  );
}

function StepWords({
  root,
  step,
  glazes,
}: CoatStackProps & { readonly step: CatalogueStep }): VNode | null {
  if (step.step === "fired") return null;
  if (step.step !== "coat")
    return (
      <>
        <span class="what mark">{markWords(step)}</span>
        <span class="how">{markPlace(step)}</span>
      </>
    );
  return (
    <>
      <span class="what">
        {step.glazes.map((id, i) => {
          const glaze = glazes[id];
          return (
            <>
              {i > 0 && " fading to "}
              {glaze ? <a href={root + glaze.url}>{glaze.name}</a> : id}
            </>
          );
        })}
      </span>
      <span class="how">{coatWords(step)}</span>
    </>
  );
}
